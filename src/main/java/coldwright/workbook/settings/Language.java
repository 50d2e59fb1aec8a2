package coldwright.workbook.settings;

import java.util.Locale;

/** The program's language; {@code SYSTEM} is that of the computer. */
public enum Language {
    SYSTEM,
    EN,
    DE;

    /** The language for texts. */
    public Locale locale() {
        return this == SYSTEM ? Locale.getDefault() : this == DE ? Locale.GERMAN : Locale.ENGLISH;
    }
}
