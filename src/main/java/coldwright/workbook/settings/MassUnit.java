package coldwright.workbook.settings;

/** Unit of masses: grams or ounces. */
public enum MassUnit {
    G,
    OZ
}
