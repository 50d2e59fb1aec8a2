package coldwright.workbook.entry;

import static coldwright.workbook.entry.WorkbookText.fault;

import coldwright.text.TextFault;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads a file of entries, as the program wrote it or a person edited it. */
public final class KeyedEntryReader {
    private static final String INDENT = "    ";
    private final List<KeyedEntry> entries = new ArrayList<>();
    private final List<TextFault> faults = new ArrayList<>();
    private final List<String> block = new ArrayList<>();
    private int skipped;

    private KeyedEntryReader() {}

    /**
     * Parses entries, in order, under the expected first line; without that heading, none and an
     * error on line 1. Lines that begin with {@code #} are comments.
     */
    public static ParsedEntries<List<KeyedEntry>> read(String text, String heading) {
        String[] lines = text.split("\n", -1);
        Optional<TextFault> wrong = wrongHeading(lines[0], heading);
        if (wrong.isPresent()) {
            return new ParsedEntries<>(List.of(), List.of(wrong.get()));
        }
        KeyedEntryReader reader = new KeyedEntryReader();
        for (int i = 1; i < lines.length; i++) {
            String line = lines[i];
            reader.line(i + 1, line.endsWith("\r") ? line.substring(0, line.length() - 1) : line);
        }
        reader.endBlock();
        return new ParsedEntries<>(List.copyOf(reader.entries), reader.faults);
    }

    /** The error if a first line isn't the heading, such as {@code Coldwright settings 1}. */
    public static Optional<TextFault> wrongHeading(String line, String heading) {
        String first = line.strip();
        boolean other = first.matches(Pattern.quote(heading.replaceFirst(" \\d+$", "")) + " \\d+");
        String key =
                first.isBlank() ? "heading.empty" : other ? "heading.version" : "heading.other";
        return first.equals(heading)
                ? Optional.empty()
                : Optional.of(fault(1, key, heading, first));
    }

    private void line(int number, String line) {
        if (line.startsWith(INDENT) && !entries.isEmpty()) {
            for (; skipped > 0; skipped--) {
                block.add("");
            }
            block.add(UnsafeCharacters.read(line.substring(INDENT.length())));
        } else if (line.isBlank()) {
            skipped += block.isEmpty() ? 0 : 1;
        } else if (Character.isWhitespace(line.charAt(0))) {
            faults.add(fault(number, "line.indent", line.strip()));
        } else if (line.charAt(0) != '#') {
            endBlock();
            entry(number, line);
        }
    }

    private void entry(int number, String line) {
        int colon = line.indexOf(':');
        if (colon <= 0) {
            faults.add(fault(number, "line.no-key", line.strip()));
            return;
        }
        String value = UnsafeCharacters.read(line.substring(colon + 1).strip());
        entries.add(
                new KeyedEntry(number, line.substring(0, colon).strip(), value, Optional.empty()));
    }

    private void endBlock() {
        if (!block.isEmpty()) {
            KeyedEntry last = entries.remove(entries.size() - 1);
            String text = String.join("\n", block);
            entries.add(new KeyedEntry(last.line(), last.key(), last.value(), Optional.of(text)));
            block.clear();
        }
        skipped = 0;
    }
}
