package coldwright.desk.run;

/**
 * What a run printed, and how much of it is shown at first.
 *
 * @param head the first lines
 * @param linesLeft how many lines more there are
 * @param all the whole
 * @param cut whether the bench kept only a part of it
 */
public record PrintedOutput(String head, long linesLeft, String all, boolean cut) {
    /** Nothing. */
    public static final PrintedOutput NOTHING = new PrintedOutput("", 0, "", false);

    private static final int LINES_SHOWN = 30;
    private static final int CHARACTERS_SHOWN = 4_000;

    /**
     * Whether it is some lines and nothing more.
     *
     * @return true if all of it is shown at first
     */
    public boolean isHead() {
        return !head.isEmpty() && linesLeft == 0 && !cut;
    }

    /**
     * Divides it.
     *
     * @param all what was printed
     * @param cut whether the bench kept only a part of it
     * @return the first 30 lines, but no more than 4,000 characters, and the rest
     */
    public static PrintedOutput of(String all, boolean cut) {
        int end = 0;
        for (int line = 0; line < LINES_SHOWN && end < all.length(); line++) {
            int lineEnd = all.indexOf('\n', end);
            end = lineEnd < 0 ? all.length() : lineEnd + 1;
        }
        end = Math.min(end, CHARACTERS_SHOWN);
        String rest = all.substring(Math.min(end, all.length()));
        return new PrintedOutput(
                all.substring(0, Math.min(end, all.length())).stripTrailing(),
                rest.isBlank() ? 0 : rest.lines().count(),
                all,
                cut);
    }
}
