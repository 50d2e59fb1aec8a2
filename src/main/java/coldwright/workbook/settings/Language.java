package coldwright.workbook.settings;

/** In what language the program speaks; {@code SYSTEM} is that of the computer. */
public enum Language {
    SYSTEM,
    EN,
    DE
}
