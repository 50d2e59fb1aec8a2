package coldwright.lesson;

/**
 * A number in a snippet that the page also offers as a slider: {@code double sugar = 120; // dial 0
 * to 300 step 5 g}.
 *
 * @param variable the declared variable's name
 * @param start where the number's text begins, characters from the snippet's start
 * @param end where it ends, not included
 * @param value the number as written
 * @param least the slider's lower end
 * @param most its upper end
 * @param step how far one notch goes, more than zero
 * @param unit the unit shown beside it; may be empty
 */
public record Dial(
        String variable,
        int start,
        int end,
        double value,
        double least,
        double most,
        double step,
        String unit) {}
