package coldwright.desk.run;

/**
 * The output of a run: the first lines, the number of further lines, all of it, and whether the
 * bench dropped a part.
 */
public record PrintedOutput(String head, long linesLeft, String all, boolean cut) {
    /** No output. */
    public static final PrintedOutput NOTHING = new PrintedOutput("", 0, "", false);

    private static final int LINES_SHOWN = 30;
    private static final int CHARACTERS_SHOWN = 4_000;

    /** Whether all of it is shown at first, and it isn't empty. */
    public boolean isHead() {
        return !head.isEmpty() && linesLeft == 0 && !cut;
    }

    /** Splits output into a head of 30 lines, but at most 4,000 characters, and the rest. */
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
