package coldwright.workbook.entry;

import coldwright.text.TextFault;
import coldwright.words.Phrase;

import java.util.stream.Stream;

/** The messages of the workbook, in the language shown. */
public final class WorkbookText {
    private static final int LONGEST_QUOTE = 60;

    private WorkbookText() {}

    /** The text of a key with its values. */
    public static String text(String key, Object... values) {
        return Phrase.of("workbook", key, values).shown();
    }

    /** The error for a part of a file that can't be used; its values are quoted on one line. */
    public static IllegalArgumentException refusal(String key, Object... values) {
        Object[] quoted =
                Stream.of(values)
                        .map(one -> one instanceof String text ? quoted(text) : one)
                        .toArray();
        return new IllegalArgumentException(text(key, quoted));
    }

    /** The same as a fault on a line, from 1. */
    public static TextFault fault(int line, String key, Object... values) {
        return new TextFault(line, refusal(key, values).getMessage());
    }

    private static String quoted(String text) {
        String plain = text.replaceAll("\\p{Cntrl}", "\uFFFD");
        return plain.length() <= LONGEST_QUOTE ? plain : plain.substring(0, LONGEST_QUOTE) + "…";
    }
}
