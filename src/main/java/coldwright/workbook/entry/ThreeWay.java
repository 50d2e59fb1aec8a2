package coldwright.workbook.entry;

/** Merges two versions: the changed one wins; if both changed, mine, and a clash is recorded. */
public final class ThreeWay {
    private boolean clash;

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

    /** Whether both have changed something, each in another way. */
    public boolean clash() {
        return clash;
    }
}
