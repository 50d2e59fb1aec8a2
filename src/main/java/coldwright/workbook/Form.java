package coldwright.workbook;

import coldwright.lesson.Lesson;
import coldwright.workbook.entry.ParsedEntries;
import coldwright.workbook.entry.ThreeWay;
import coldwright.workbook.settings.Agreements;
import coldwright.workbook.settings.Preferences;
import coldwright.workbook.settings.PreferencesText;
import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.LessonKey;
import coldwright.workbook.work.LessonWork;
import coldwright.workbook.work.WorkMerge;
import coldwright.workbook.work.WorkText;

import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * The text form of a value, and how to merge two versions of it.
 *
 * @param reader reads a file's text; empty if none of it is usable
 * @param writer writes what the reader reads
 * @param none the value before anything was saved, from one that is about to be
 * @param fit fits a value that was read to the lesson's current text
 * @param fitted the first value, fitted if it belongs to another text than the second
 * @param alike the first value with all that is the same to the user as in the second
 */
record Form<T>(
        Function<String, ParsedEntries<Optional<T>>> reader,
        Function<T, String> writer,
        UnaryOperator<T> none,
        UnaryOperator<T> fit,
        BinaryOperator<T> fitted,
        BinaryOperator<T> alike,
        Merger<T> merger) {
    static final Form<Preferences> SETTINGS =
            whole(
                    PreferencesText::read,
                    PreferencesText::write,
                    Preferences.usual(),
                    Preferences::merge);
    static final Form<Agreements> AGREED =
            whole(
                    Agreements::read,
                    Agreements::text,
                    Agreements.none(),
                    (base, mine, theirs) -> new ThreeWay().merged(mine.mergedWith(base, theirs)));

    /** Merges two versions of a value that have a common ancestor. */
    interface Merger<T> {
        ThreeWay.Merged<T> of(T base, T mine, T theirs);
    }

    private static <T> Form<T> whole(
            Function<String, ParsedEntries<T>> reader,
            Function<T, String> writer,
            T usual,
            Merger<T> merger) {
        return new Form<>(
                text -> {
                    ParsedEntries<T> parsed = reader.apply(text);
                    return new ParsedEntries<>(Optional.of(parsed.value()), parsed.faults());
                },
                writer,
                mine -> usual,
                value -> value,
                (value, mine) -> value,
                (one, other) -> one,
                merger);
    }

    /** Work in a lesson, as it was saved. */
    static Form<LessonWork> work(LessonKey key) {
        return work(key, work -> work);
    }

    /** Work in a lesson, fitted to its current text. */
    static Form<LessonWork> work(LessonKey key, Lesson lesson) {
        ContentHash hash = ContentHash.of(lesson.text());
        return work(key, work -> work.fittedTo(lesson, hash));
    }

    private static Form<LessonWork> work(LessonKey key, UnaryOperator<LessonWork> fit) {
        return new Form<>(
                text -> WorkText.read(key, text),
                WorkText::write,
                LessonWork::emptied,
                fit,
                (value, mine) ->
                        value.lessonHash().equals(mine.lessonHash()) ? value : fit.apply(value),
                (one, other) -> one.changedAt(other.changed()),
                WorkMerge::of);
    }

    /** Whether two values are the same to the user. */
    boolean same(T one, T other) {
        return alike.apply(one, other).equals(other);
    }
}
