package coldwright.science.plan;

import coldwright.science.balance.AmountChange;
import coldwright.words.Worded;

import java.util.List;

/**
 * One change of a batch that resolves its faults at once, computed again as a whole.
 *
 * @param character what is different about it
 * @param changes amounts to add and take out, as scales show them; empty if only the making changes
 * @param before the batch as it is
 * @param after the batch with the plan, frozen again
 * @param left the faults that it can't resolve, each with the reason
 */
public record Plan(
        Character character,
        List<AmountChange> changes,
        BatchState before,
        BatchState after,
        List<Left> left) {
    /** What a plan is like. */
    public enum Character implements Worded {
        /** The smallest change. */
        LEAST,
        /** Only what is in the batch, and water. */
        NOTHING_TO_BUY,
        /** Another method, serving temperature or style. */
        OTHER_WAY
    }

    /** Why a fault is left. */
    public enum Why {
        /** Nothing that the diet and the style allow moves it. */
        NO_INGREDIENT,
        /** It would take more than a quarter of the batch: another recipe. */
        ANOTHER_RECIPE,
        /** Each way crosses a limit of taste or brings another fault. */
        LIMITS,
        /** No method here resolves it. */
        NO_METHOD
    }

    /**
     * A fault that is left.
     *
     * @param why the reason
     */
    public record Left(Finding fault, Why why) {}

    /** Copies the lists. */
    public Plan {
        changes = List.copyOf(changes);
        left = List.copyOf(left);
    }

    /**
     * How much of the batch is another: what is added or what is taken out, whichever is more.
     *
     * @return share of the mix, 0 to 1
     */
    public double movedShare() {
        double more = changes.stream().mapToDouble(one -> Math.max(0, one.massG())).sum();
        double less = changes.stream().mapToDouble(one -> Math.max(0, -one.massG())).sum();
        return Math.max(more, less) / before.pieces().mix().massG();
    }

    /**
     * Whether nothing worth a sentence is left.
     *
     * @return true if so
     */
    public boolean resolvesAll() {
        return left.isEmpty();
    }
}
