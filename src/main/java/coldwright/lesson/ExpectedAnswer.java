package coldwright.lesson;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Pattern;

/** The right answer to a prediction. */
public sealed interface ExpectedAnswer {
    /** Calls the function for this kind of answer. With a new kind every caller must treat it. */
    <T> T match(Function<Choice, T> choice, Function<Amount, T> amount, Function<Curve, T> curve);

    /**
     * A multiple choice.
     *
     * @param choices the options, two or more
     * @param right index of the right one, from 0
     */
    record Choice(List<String> choices, int right) implements ExpectedAnswer {
        /** Makes defensive copies. */
        public Choice {
            choices = List.copyOf(choices);
        }

        @Override
        public <T> T match(
                Function<Choice, T> choice, Function<Amount, T> amount, Function<Curve, T> curve) {
            return choice.apply(this);
        }
    }

    /**
     * A number.
     *
     * @param value the right number
     * @param unit its unit; may be empty
     * @param within allowed difference, same unit
     */
    record Amount(double value, String unit, double within) implements ExpectedAnswer {
        private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)");

        @Override
        public <T> T match(
                Function<Choice, T> choice, Function<Amount, T> amount, Function<Curve, T> curve) {
            return amount.apply(this);
        }

        /**
         * Whether a number counts as right.
         *
         * @param said a number, in the unit
         */
        public boolean accepts(double said) {
            return Math.abs(said - value) <= within;
        }

        /**
         * Reads a number as people type it.
         *
         * @param typed with a decimal point or comma, any kind of minus, with or without the unit
         * @return empty if it isn't a number
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
     * A hand-drawn curve; the right answer is the first curve that the run draws.
     *
     * @param level the x axis
     * @param upright the y axis
     */
    record Curve(Scale level, Scale upright) implements ExpectedAnswer {
        @Override
        public <T> T match(
                Function<Choice, T> choice, Function<Amount, T> amount, Function<Curve, T> curve) {
            return curve.apply(this);
        }
    }

    /**
     * An axis to draw along.
     *
     * @param label its quantity
     * @param from its lower end
     * @param to its upper end, above the lower
     * @param unit may be empty
     */
    record Scale(String label, double from, double to, String unit) {}
}
