package coldwright.lesson;

import java.util.List;

/** The right answer to a forecast. */
public sealed interface Answer {
    /**
     * One of several.
     *
     * @param choices what may be chosen, two or more
     * @param right which of them is right, from 0
     */
    record Choice(List<String> choices, int right) implements Answer {
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
    record Amount(double value, String unit, double within) implements Answer {}
}
