package coldwright.terminal.console;

import static coldwright.terminal.console.ConsoleText.text;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Explains an unknown name whose snippet failed: the usual message would send the reader after a
 * typing error that isn't there.
 */
public final class MissingNameText {
    private static final Pattern UNKNOWN =
            Pattern.compile("(?:Cannot find symbol|Das Symbol) `(\\w+)[^`]*`.*");

    private final Map<String, String> failed = new LinkedHashMap<>();

    public void failed(String which, String code) {
        failed.put(which, code);
    }

    /** The message, or the better explanation. */
    public String why(String words) {
        Matcher unknown = UNKNOWN.matcher(words);
        if (!unknown.find()) {
            return words;
        }
        String name = unknown.group(1);
        Optional<String> which =
                failed.keySet().stream()
                        .filter(
                                one ->
                                        Pattern.compile("\\b" + name + "\\b")
                                                .matcher(failed.get(one))
                                                .find())
                        .findFirst();
        return which.map(
                        one ->
                                unknown.replaceFirst(
                                        Matcher.quoteReplacement(text("missing", name, one))))
                .orElse(words);
    }
}
