package coldwright.workbook.entry;

/**
 * Chooses between two versions of a value that began as one: whoever changed it, wins. If both did,
 * mine wins, and that is remembered.
 */
public final class ThreeWay {
    private boolean clash;

    /**
     * Chooses one.
     *
     * @param <T> what is chosen
     * @param base what both began with
     * @param mine what this window has
     * @param theirs what another one wrote
     * @return theirs if only they changed it, else mine
     */
    public <T> T choose(T base, T mine, T theirs) {
        if (mine.equals(base)) {
            return theirs;
        }
        clash |= !theirs.equals(base) && !theirs.equals(mine);
        return mine;
    }

    /**
     * Whether both had changed something, each in another way.
     *
     * @return true once that has happened
     */
    public boolean clash() {
        return clash;
    }
}
