package coldwright.terminal.console;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.words.Phrase;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Explains an unknown name whose snippet failed: the usual message would send the reader after a
 * typing error that isn't there.
 */
public final class MissingNameText {
    /** The compiler's message up to the name, in the language shown. */
    private final Pattern unknown =
            Pattern.compile(
                    Pattern.quote(
                                    Phrase.of("bench.compile", "symbol")
                                            .shown()
                                            .replaceFirst("%s.*", ""))
                            + "(\\w+)[^`]*`.*");

    private final Map<String, String> failed = new LinkedHashMap<>();

    public void failed(String which, String code) {
        failed.put(which, code);
    }

    /** The message, or the better explanation. */
    public String why(String words) {
        Matcher found = unknown.matcher(words);
        if (!found.find()) {
            return words;
        }
        Pattern name = Pattern.compile("\\b" + found.group(1) + "\\b");
        return failed.entrySet().stream()
                .filter(one -> name.matcher(one.getValue()).find())
                .findFirst()
                .map(one -> text("missing", found.group(1), one.getKey()))
                .map(why -> found.replaceFirst(Matcher.quoteReplacement(why)))
                .orElse(words);
    }
}
