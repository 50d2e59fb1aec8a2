package coldwright.science.freezer;

/** Where in the spread of film coefficients and motion a plan is read. */
public enum Reading {
    /** Poor contact, lazy motion. */
    SLOW,
    /** The middle of the spread. */
    LIKELY,
    /** Good contact, brisk motion. */
    FAST
}
