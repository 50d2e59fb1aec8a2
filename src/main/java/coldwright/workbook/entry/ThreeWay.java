package coldwright.workbook.entry;

import java.util.function.Function;

/** Merges two versions: the changed one wins; if both changed, mine, and a clash is recorded. */
public final class ThreeWay {
    private boolean clash;

    /**
     * The result of a merge. If both changed the same thing, that is a clash: the value has mine,
     * and part of theirs is missing.
     */
    public record Merged<T>(T value, boolean clash) {}

    /**
     * Chooses between this window's and another window's version: theirs if only they changed the
     * common ancestor, else mine.
     */
    public <T> T choose(T base, T mine, T theirs) {
        if (mine.equals(base)) {
            return theirs;
        }
        clash |= !theirs.equals(base) && !theirs.equals(mine);
        return mine;
    }

    /** The same for a part of each version. */
    public <W, T> T choose(W base, W mine, W theirs, Function<W, T> part) {
        return choose(part.apply(base), part.apply(mine), part.apply(theirs));
    }

    /** A merged value, and whether both have changed something in it, each in another way. */
    public <T> Merged<T> merged(T value) {
        return new Merged<>(value, clash);
    }
}
