package coldwright.desk.model;

/** The page that is shown. */
public enum ShownPage {
    /** Introduction, and where to begin. */
    HOME,
    /** The open lesson. */
    LESSON,
    /** The open lesson in classroom view. */
    CLASSROOM,
    /** The cook's own batches. */
    BATCH,
    /** The kitchen trials that need no machine. */
    TRIALS,
    /** The terms of the trade. */
    GLOSSARY,
    /** Type, colours, units, limits. */
    SETTINGS
}
