package coldwright.science.balance;

import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;

import java.util.List;

/**
 * The result of a balance.
 *
 * @param mix the amounts that come nearest to the targets
 * @param shortfalls the targets that can't be met within the bounds; empty if all are met
 * @param atLimit the ingredients at the least or most allowed amount; these limits keep targets
 *     from being met
 */
public record Balanced(Mix mix, List<Shortfall> shortfalls, List<Ingredient> atLimit) {
    public Balanced {
        shortfalls = List.copyOf(shortfalls);
        atLimit = List.copyOf(atLimit);
    }

    /** Whether every target is met. */
    public boolean met() {
        return shortfalls.isEmpty();
    }
}
