package coldwright.science.diagnosis;

/**
 * Something to expect of a batch.
 *
 * @param what what to expect
 * @param why the computed cause
 * @param mend what to change, with the new figure where an amount mends it
 */
public record Finding(String what, String why, String mend) {}
