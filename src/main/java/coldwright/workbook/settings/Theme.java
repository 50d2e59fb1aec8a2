package coldwright.workbook.settings;

/** Colours of the window. */
public enum Theme {
    LIGHT,
    DARK,
    CONTRAST
}
