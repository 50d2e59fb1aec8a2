package coldwright.workbook;

import coldwright.lesson.Lesson;
import coldwright.workbook.entry.Merged;
import coldwright.workbook.entry.ParsedEntries;
import coldwright.workbook.settings.Agreements;
import coldwright.workbook.settings.Preferences;
import coldwright.workbook.settings.PreferencesMerge;
import coldwright.workbook.settings.PreferencesText;
import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.LessonKey;
import coldwright.workbook.work.LessonWork;
import coldwright.workbook.work.WorkMerge;
import coldwright.workbook.work.WorkText;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** The text forms of a workbook's values. */
final class Forms {
    static final Form<Preferences> SETTINGS =
            new Whole<>(
                    PreferencesText::read,
                    PreferencesText::write,
                    Preferences.usual(),
                    PreferencesMerge::of);

    static final Form<Agreements> AGREED =
            new Whole<>(
                    Agreements::read,
                    Agreements::text,
                    Agreements.none(),
                    (base, mine, theirs) -> new Merged<>(mine.mergedWith(base, theirs), false));

    private Forms() {}

    /** Merges two versions of a value that have a common ancestor. */
    private interface Merger<T> {
        Merged<T> of(T base, T mine, T theirs);
    }

    /** A value that needs no fitting and is compared as a whole. */
    private record Whole<T>(
            Function<String, ParsedEntries<T>> reader,
            Function<T, String> writer,
            T usual,
            Merger<T> merger)
            implements Form<T> {
        @Override
        public ParsedEntries<Optional<T>> read(String text) {
            ParsedEntries<T> parsed = reader.apply(text);
            return new ParsedEntries<>(Optional.of(parsed.value()), parsed.faults());
        }

        @Override
        public String write(T value) {
            return writer.apply(value);
        }

        @Override
        public T fitted(T value, T mine) {
            return value;
        }

        @Override
        public T none(T mine) {
            return usual;
        }

        @Override
        public boolean same(T one, T other) {
            return one.equals(other);
        }

        @Override
        public Merged<T> merge(T base, T mine, T theirs) {
            return merger.of(base, mine, theirs);
        }
    }

    /** Work in a lesson, and what fits it to the current text of the lesson. */
    record Work(LessonKey key, UnaryOperator<LessonWork> fit) implements Form<LessonWork> {
        static Work of(LessonKey key, Lesson lesson) {
            return new Work(key, work -> work.fittedTo(lesson, ContentHash.of(lesson.text())));
        }

        @Override
        public ParsedEntries<Optional<LessonWork>> read(String text) {
            return WorkText.read(key, text);
        }

        @Override
        public String write(LessonWork value) {
            return WorkText.write(value);
        }

        @Override
        public LessonWork fitted(LessonWork value, LessonWork mine) {
            return value.lessonHash().equals(mine.lessonHash()) ? value : fit.apply(value);
        }

        @Override
        public LessonWork none(LessonWork mine) {
            return mine.emptied();
        }

        @Override
        public boolean same(LessonWork one, LessonWork other) {
            return one.changedAt(other.changed()).equals(other);
        }

        @Override
        public Merged<LessonWork> merge(LessonWork base, LessonWork mine, LessonWork theirs) {
            return WorkMerge.of(base, mine, theirs);
        }
    }
}
