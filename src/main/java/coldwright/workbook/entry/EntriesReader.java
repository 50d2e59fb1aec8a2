package coldwright.workbook.entry;

import static coldwright.workbook.entry.WorkbookText.fault;
import static coldwright.workbook.entry.WorkbookText.refusal;

import coldwright.text.TextFault;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Reads a file entry by entry. An error in one is reported, and the next is read. */
public abstract class EntriesReader<T> {
    private final String heading;
    private final Set<String> headKeys;
    private final Map<String, KeyedEntry> head = new HashMap<>();
    private final List<TextFault> faults = new ArrayList<>();

    /** A reader of files with this first line; each of the keys appears once, at the top. */
    protected EntriesReader(String heading, String... headKeys) {
        this.heading = heading;
        this.headKeys = Set.of(headKeys);
    }

    /** Reads a text: its usable part, empty if it isn't such a file; and its errors. */
    public final ParsedEntries<Optional<T>> read(String text) {
        ParsedEntries<List<KeyedEntry>> entries = KeyedEntryReader.read(text, heading);
        faults.addAll(entries.faults());
        entries.value().forEach(this::takeOrReport);
        if (entries.value().isEmpty() && faults.isEmpty()) {
            faults.add(fault(1, "file.heading-only"));
        }
        Optional<T> made = entries.value().isEmpty() ? Optional.empty() : made();
        return new ParsedEntries<>(made, faults);
    }

    private void takeOrReport(KeyedEntry entry) {
        try {
            if (!headKeys.contains(entry.key())) {
                take(entry);
            } else if (head.putIfAbsent(entry.key(), entry) != null) {
                throw refusal("entry.twice", entry.key());
            }
        } catch (IllegalArgumentException e) {
            faults.add(new TextFault(entry.line(), e.getMessage()));
        }
    }

    /** Takes an entry that isn't one of the head; refuses one that can't be used. */
    protected abstract void take(KeyedEntry entry);

    /** What the entries taken make; empty if an essential one is missing. */
    protected abstract Optional<T> made();

    /** A value of the head; if it is unusable, that is reported and it is empty. */
    protected final <V> Optional<V> head(String key, Function<String, V> parse) {
        return Optional.ofNullable(head.get(key)).flatMap(entry -> parsed(entry, parse));
    }

    /** The value of an entry; if it is unusable, that is reported and it is empty. */
    protected final <V> Optional<V> parsed(KeyedEntry entry, Function<String, V> parse) {
        try {
            return Optional.of(parse.apply(entry.value()));
        } catch (IllegalArgumentException e) {
            faults.add(new TextFault(entry.line(), e.getMessage()));
            return Optional.empty();
        }
    }

    /** As {@link #head}; a missing one is reported too. */
    protected final <V> Optional<V> needed(String key, Function<String, V> parse) {
        if (!head.containsKey(key)) {
            faults.add(fault(1, "file.no-line", key));
        }
        return head(key, parse);
    }

    /** A time such as {@code 2026-11-25T16:40:27Z}. */
    protected static Instant time(String value) {
        try {
            return Instant.parse(value);
        } catch (DateTimeException e) {
            throw refusal("entry.no-time", value);
        }
    }
}
