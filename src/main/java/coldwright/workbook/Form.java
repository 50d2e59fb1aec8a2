package coldwright.workbook;

import coldwright.workbook.entry.Merged;
import coldwright.workbook.entry.ParsedEntries;

import java.util.Optional;

/** The text form of a value, and how to merge two versions of it. */
interface Form<T> {
    /** Reads a file's text; empty if none of it is usable. */
    ParsedEntries<Optional<T>> read(String text);

    /** Writes what {@link #read} reads. */
    String write(T value);

    /** The value in the shape of {@code mine}. */
    T fitted(T value, T mine);

    /** The value before anything was saved. */
    T none(T mine);

    /** Whether two values are the same to the user. */
    boolean same(T one, T other);

    Merged<T> merge(T base, T mine, T theirs);
}
