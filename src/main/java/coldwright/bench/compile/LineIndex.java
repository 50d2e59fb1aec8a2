package coldwright.bench.compile;

/** Converts between positions and lines of a text. */
public final class LineIndex {
    private LineIndex() {}

    /**
     * The line of a position, from 1.
     *
     * @param offset characters from the text's start
     */
    public static int lineAt(String text, int offset) {
        int end = Math.min(offset, text.length());
        return 1 + (int) text.chars().limit(end).filter(c -> c == '\n').count();
    }

    /**
     * The position where a line begins, characters from the text's start.
     *
     * @param line the line, from 1; 0 means the first
     */
    public static int startOf(String text, int line) {
        int start = 0;
        for (int i = 1; i < line; i++) {
            int end = text.indexOf('\n', start);
            if (end < 0) {
                return text.length();
            }
            start = end + 1;
        }
        return start;
    }

    /**
     * The position where a line ends, without its line break.
     *
     * @param line the line, from 1; 0 means the first
     */
    public static int endOf(String text, int line) {
        int end = text.indexOf('\n', startOf(text, line));
        return end < 0 ? text.length() : end;
    }
}
