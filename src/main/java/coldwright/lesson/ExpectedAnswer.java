package coldwright.lesson;

import java.util.List;

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
    record Amount(double value, String unit, double within) implements ExpectedAnswer {}

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
