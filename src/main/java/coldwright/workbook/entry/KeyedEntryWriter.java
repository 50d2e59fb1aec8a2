package coldwright.workbook.entry;

/** Writes a file of entries. What is written reads back the same, whatever the texts hold. */
public final class KeyedEntryWriter {
    private static final String INDENT = "    ";

    private final StringBuilder out = new StringBuilder();

    /**
     * Begins a file.
     *
     * @param heading its first line, such as {@code Coldwright workbook 1}
     */
    public KeyedEntryWriter(String heading) {
        out.append(heading).append('\n');
    }

    /**
     * Writes a line.
     *
     * @param key what stands before the colon
     * @param value any text
     * @return this
     */
    public KeyedEntryWriter entry(String key, String value) {
        out.append((key + ": " + UnsafeCharacters.value(value)).stripTrailing()).append('\n');
        return this;
    }

    /**
     * Writes any text, indented, under the entry before.
     *
     * @param text such as Java code
     * @return this
     */
    public KeyedEntryWriter block(String text) {
        for (String line : text.split("\n", -1)) {
            out.append(INDENT).append(UnsafeCharacters.line(line)).append('\n');
        }
        return this;
    }

    /**
     * Leaves a line empty, for the eye.
     *
     * @return this
     */
    public KeyedEntryWriter gap() {
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
