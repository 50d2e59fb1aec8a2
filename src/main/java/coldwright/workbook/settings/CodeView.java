package coldwright.workbook.settings;

/** How much of a snippet's code is shown. */
public enum CodeView {
    /** All but the lines that the author marked as aside. */
    ESSENTIAL,
    ALL,
    /** Dials alone; the code of an exercise without dials is shown all the same. */
    NONE
}
