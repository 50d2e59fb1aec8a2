package coldwright.workbook;

import coldwright.workbook.entry.Merged;
import coldwright.workbook.entry.ParsedEntries;

import java.util.Optional;

/**
 * What is kept in a file as text, and how two versions of it are brought together.
 *
 * @param <T> what is kept
 */
interface Form<T> {
    /** Reads a file's text; empty if nothing of it is usable. */
    ParsedEntries<Optional<T>> read(String text);

    /** Writes what {@link #read} reads. */
    String write(T value);

    /** The same in the shape that {@code mine} has, if that is another. */
    T fitted(T value, T mine);

    /** What was kept before anything was. */
    T none(T mine);

    /** Whether two are the same to the user. */
    boolean same(T one, T other);

    /** Both versions together. */
    Merged<T> merge(T base, T mine, T theirs);
}
