package coldwright.workbook.entry;

/** Writes a file of entries. Any text reads back unchanged. */
public final class KeyedEntryWriter {
    private static final String INDENT = "    ";

    private final StringBuilder out = new StringBuilder();

    /** Starts a file with its first line, such as {@code Coldwright workbook 1}. */
    public KeyedEntryWriter(String heading) {
        out.append(heading).append('\n');
    }

    public KeyedEntryWriter entry(String key, String value) {
        out.append((key + ": " + UnsafeCharacters.value(value)).stripTrailing()).append('\n');
        return this;
    }

    /** Writes any text, such as Java code, indented under the entry before. */
    public KeyedEntryWriter block(String text) {
        for (String line : text.split("\n", -1)) {
            out.append(INDENT).append(UnsafeCharacters.line(line)).append('\n');
        }
        return this;
    }

    /** Adds an empty line for readability. */
    public KeyedEntryWriter gap() {
        out.append('\n');
        return this;
    }

    /** The file so far, ending in {@code \n}. */
    public String text() {
        return out.toString();
    }
}
