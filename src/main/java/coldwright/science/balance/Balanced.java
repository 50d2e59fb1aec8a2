package coldwright.science.balance;

import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;

import java.util.List;

/**
 * What a balance found.
 *
 * @param mix the amounts that come nearest to the targets
 * @param shortfalls the targets that can't be met within the bounds; empty if all are met
 * @param atLimit the ingredients that stand at the least or most allowed, which is what holds unmet
 *     targets back
 */
public record Balanced(Mix mix, List<Shortfall> shortfalls, List<Ingredient> atLimit) {
    /** Copies what is given. */
    public Balanced {
        shortfalls = List.copyOf(shortfalls);
        atLimit = List.copyOf(atLimit);
    }

    /**
     * Whether every target is met.
     *
     * @return true if so
     */
    public boolean met() {
        return shortfalls.isEmpty();
    }
}
