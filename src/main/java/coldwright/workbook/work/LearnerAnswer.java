package coldwright.workbook.work;

import static coldwright.workbook.entry.WorkbookText.refusal;

import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** A learner's answer before a run. */
public sealed interface LearnerAnswer {
    /** The answer as it is handed in. */
    String words();

    /** One of several choices, by its index from 0, with its text when it was chosen. */
    record Choice(int index, String words) implements LearnerAnswer {
        /** Refuses an index below 0 or above 99,999. */
        public Choice {
            GivenPrediction.requireIndex(index);
            Objects.requireNonNull(words);
        }

        /**
         * The index of this choice, from 0, in a lesson that may have changed since; empty if no
         * choice has the same text.
         */
        public OptionalInt among(List<String> choices) {
            if (index < choices.size() && choices.get(index).equals(words)) {
                return OptionalInt.of(index);
            }
            int now = choices.indexOf(words);
            return now < 0 ? OptionalInt.empty() : OptionalInt.of(now);
        }
    }

    /** A number as typed. */
    record Typed(String text) implements LearnerAnswer {
        public Typed {
            Objects.requireNonNull(text);
        }

        @Override
        public String words() {
            return text;
        }
    }

    /** A curve drawn by hand: its points in the order in which they were drawn. */
    record Curve(List<Point> points) implements LearnerAnswer {
        /** The beginning of its words; the points follow, with semicolons between them. */
        public static final String WORDS = "a curve through ";

        public Curve {
            points = List.copyOf(points);
        }

        @Override
        public String words() {
            return points.stream()
                    .map(Point::toString)
                    .collect(Collectors.joining("; ", WORDS, ""));
        }
    }

    /** A point of a drawn curve, in the units of the axes. */
    record Point(double x, double y) {
        /** Refuses what is infinite or not a number. */
        public Point {
            if (!Double.isFinite(x) || !Double.isFinite(y)) {
                throw refusal("point.infinite", x, y);
            }
        }

        @Override
        public String toString() {
            return x + " " + y;
        }
    }
}
