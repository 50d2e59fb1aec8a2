package coldwright.workbook.settings;

import static coldwright.workbook.entry.WorkbookText.fault;

import coldwright.text.TextFault;
import coldwright.workbook.entry.KeyedEntryReader;
import coldwright.workbook.entry.ParsedEntries;
import coldwright.workbook.work.ContentHash;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Lessons whose snippets a user agreed to run: their names then, by the hash of their text. A
 * lesson whose text changes by one letter is another lesson.
 */
public record Agreements(Map<ContentHash, String> names) {
    private static final String HEADING = "Coldwright agreements 1";

    /** Keeps the order of agreement. */
    public Agreements {
        names = Collections.unmodifiableMap(new LinkedHashMap<>(names));
    }

    public static Agreements none() {
        return new Agreements(Map.of());
    }

    /** Whether the user agreed to a lesson's text. */
    public boolean agreed(ContentHash hash) {
        return names.containsKey(hash);
    }

    /** Adds an agreement to a lesson's text under its name, whose line ends become spaces. */
    public Agreements agree(ContentHash hash, String name) {
        Map<ContentHash, String> next = new LinkedHashMap<>(names);
        next.put(
                hash,
                name.replaceAll("[\\p{Cntrl}\\u0080-\\u009F\\u2028\\u2029\\s]+", " ").strip());
        return new Agreements(next);
    }

    /** Merges two windows' agreements since their ancestor: theirs, and those added here. */
    public Agreements mergedWith(Agreements base, Agreements theirs) {
        Map<ContentHash, String> all = new LinkedHashMap<>(theirs.names);
        names.forEach(
                (hash, name) -> {
                    if (!base.agreed(hash)) {
                        all.putIfAbsent(hash, name);
                    }
                });
        return new Agreements(all);
    }

    /** Text with a hash and a name per line, which {@link #read} parses to the same agreements. */
    public String text() {
        StringBuilder out = new StringBuilder(HEADING).append('\n');
        names.forEach((hash, name) -> out.append((hash.hex() + " " + name).strip()).append('\n'));
        return out.toString();
    }

    /**
     * Reads agreements, with a sentence for each error. Invalid hashes are skipped, and so is all
     * of another version's file.
     */
    public static ParsedEntries<Agreements> read(String text) {
        Agreements agreements = none();
        List<TextFault> faults = new ArrayList<>();
        String[] lines = text.split("\\R", -1);
        Optional<TextFault> wrong = KeyedEntryReader.wrongHeading(lines[0], HEADING);
        if (wrong.isPresent()) {
            return new ParsedEntries<>(agreements, List.of(wrong.get()));
        }
        for (int i = 1; i < lines.length; i++) {
            String line = lines[i].strip();
            String[] both = line.split("\\s+", 2);
            if (both[0].matches("[0-9a-f]{64}")) {
                agreements =
                        agreements.agree(new ContentHash(both[0]), both.length > 1 ? both[1] : "");
            } else if (!line.isEmpty()) {
                faults.add(fault(i + 1, "agreement.unfit", line));
            }
        }
        if (!lines[lines.length - 1].isEmpty()) {
            faults.add(fault(lines.length, "file.cut"));
        }
        return new ParsedEntries<>(agreements, faults);
    }
}
