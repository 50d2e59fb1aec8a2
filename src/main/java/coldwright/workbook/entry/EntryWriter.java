package coldwright.workbook.entry;

/** Writes a file of entries. What is written reads back the same, whatever the texts hold. */
public final class EntryWriter {
    private static final String INDENT = "    ";

    private final StringBuilder out = new StringBuilder();

    /**
     * Begins a file.
     *
     * @param heading its first line, such as {@code Coldwright workbook 1}
     */
    public EntryWriter(String heading) {
        out.append(heading).append('\n');
    }

    /**
     * Writes a line.
     *
     * @param key what stands before the colon
     * @param value any text
     * @return this
     */
    public EntryWriter entry(String key, String value) {
        out.append((key + ": " + Marks.value(value)).stripTrailing()).append('\n');
        return this;
    }

    /**
     * Writes any text, indented, under the entry before.
     *
     * @param text such as Java code
     * @return this
     */
    public EntryWriter block(String text) {
        for (String line : text.split("\n", -1)) {
            out.append(INDENT).append(Marks.line(line)).append('\n');
        }
        return this;
    }

    /**
     * Leaves a line empty, for the eye.
     *
     * @return this
     */
    public EntryWriter gap() {
        out.append('\n');
        return this;
    }

    /**
     * The file so far.
     *
     * @return its text, ending in {@code \n}
     */
    public String text() {
        return out.toString();
    }
}
