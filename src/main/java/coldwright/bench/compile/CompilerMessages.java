package coldwright.bench.compile;

import jdk.jshell.Diag;

import java.util.Locale;

/**
 * Gets the compiler's messages in English. The compiler looks them up in the requested locale, then
 * in the default one, and only then in English, so the default is set to English meanwhile.
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
