package coldwright.lesson;

import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** The right answer to a forecast. */
public sealed interface ExpectedAnswer {
    /**
     * One of several.
     *
     * @param choices what may be chosen, two or more
     * @param right which of them is right, from 0
     */
    record Choice(List<String> choices, int right) implements ExpectedAnswer {
        /** Copies what is given. */
        public Choice {
            choices = List.copyOf(choices);
        }
    }

    /**
     * A number.
     *
     * @param value the right number
     * @param unit its unit; may be empty
     * @param within how far off still counts as right, same unit
     */
    record Amount(double value, String unit, double within) implements ExpectedAnswer {
        private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)");

        /**
         * Whether a number counts as right.
         *
         * @param said a number, in the unit
         * @return true if it is as near as allowed
         */
        public boolean accepts(double said) {
            return Math.abs(said - value) <= within;
        }

        /**
         * Reads a number as people type it.
         *
         * @param typed with a point or a comma, any kind of minus, and the unit behind it or not
         * @return the number; empty if it is none
         */
        public OptionalDouble read(String typed) {
            String text = typed.strip();
            int end = text.length() - unit.strip().length();
            String bare =
                    text.regionMatches(true, end, unit.strip(), 0, unit.strip().length())
                            ? text.substring(0, end)
                            : text;
            String plain =
                    bare.strip()
                            .replace(',', '.')
                            .replaceAll("[−–]", "-")
                            .replaceAll("^([-+])\\s+", "$1");
            return NUMBER.matcher(plain).matches()
                    ? OptionalDouble.of(Double.parseDouble(plain))
                    : OptionalDouble.empty();
        }
    }

    /**
     * A curve drawn by hand; what is right is the first curve that the run draws.
     *
     * @param level the level axis
     * @param upright the upright axis
     */
    record Curve(Scale level, Scale upright) implements ExpectedAnswer {}

    /**
     * An axis to draw along.
     *
     * @param label what it shows
     * @param from its lower end
     * @param to its upper end, more than the lower
     * @param unit the unit of both; may be empty
     */
    record Scale(String label, double from, double to, String unit) {}
}
