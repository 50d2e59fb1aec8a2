package coldwright.bench.compile;

import jdk.jshell.Diag;

import java.util.Locale;

/**
 * The compiler's message in English. The compiler looks for its messages in the locale it is asked
 * for, then in the default one, and its English ones are found only after both: so the default is
 * English while it is asked.
 */
final class CompilerMessages {
    private CompilerMessages() {}

    static synchronized String of(Diag diag) {
        Locale own = Locale.getDefault();
        if (own.getLanguage().equals(Locale.ENGLISH.getLanguage())) {
            return diag.getMessage(Locale.ENGLISH);
        }
        Locale.setDefault(Locale.ENGLISH);
        try {
            return diag.getMessage(Locale.ENGLISH);
        } finally {
            Locale.setDefault(own);
        }
    }
}
