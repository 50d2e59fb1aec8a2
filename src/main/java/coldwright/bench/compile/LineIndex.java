package coldwright.bench.compile;

/** Counts lines. */
public final class LineIndex {
    private LineIndex() {}

    /**
     * The line that a place stands in.
     *
     * @param text the text
     * @param offset characters from its start
     * @return the line, from 1
     */
    public static int lineAt(String text, int offset) {
        int end = Math.min(offset, text.length());
        return 1 + (int) text.chars().limit(end).filter(c -> c == '\n').count();
    }

    /**
     * Where a line begins.
     *
     * @param text the text
     * @param line the line, from 1; 0 stands for the first
     * @return characters from the text's start
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
     * Where a line ends.
     *
     * @param text the text
     * @param line the line, from 1; 0 stands for the first
     * @return characters from the text's start, the line break not included
     */
    public static int endOf(String text, int line) {
        int end = text.indexOf('\n', startOf(text, line));
        return end < 0 ? text.length() : end;
    }
}
