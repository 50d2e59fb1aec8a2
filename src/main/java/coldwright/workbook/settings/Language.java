package coldwright.workbook.settings;

import coldwright.words.Words;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The program's language, by its tag such as {@code de}; {@link #SYSTEM} is the computer's. */
public record Language(String tag) {
    /** The computer's language. */
    public static final Language SYSTEM = new Language("system");

    private static final List<Language> ALL =
            Stream.concat(
                            Stream.of(SYSTEM),
                            Words.languages().stream().map(Locale::getLanguage).map(Language::new))
                    .toList();

    /** Every choice: the computer's language and those that the texts are translated into. */
    public static List<Language> all() {
        return ALL;
    }

    /** The language for texts. */
    public Locale locale() {
        return equals(SYSTEM) ? Locale.getDefault() : Locale.forLanguageTag(tag);
    }
}
