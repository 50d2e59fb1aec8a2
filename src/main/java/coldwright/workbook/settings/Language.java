package coldwright.workbook.settings;

/** The program's language; {@code SYSTEM} is that of the computer. */
public enum Language {
    SYSTEM,
    EN,
    DE
}
