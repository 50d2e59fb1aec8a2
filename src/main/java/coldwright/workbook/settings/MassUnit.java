package coldwright.workbook.settings;

/** In what masses are shown: grams or ounces. */
public enum MassUnit {
    G,
    OZ
}
