package coldwright.desk.model;

/** What the page shows. */
public enum ShownPage {
    /** What this is, and where to begin. */
    HOME,
    /** The open lesson. */
    LESSON,
    /** The open lesson laid out for a room. */
    CLASSROOM,
    /** The cook's own batches. */
    BATCH,
    /** The kitchen trials that need no machine. */
    TRIALS,
    /** Type, colours, units, limits. */
    SETTINGS
}
