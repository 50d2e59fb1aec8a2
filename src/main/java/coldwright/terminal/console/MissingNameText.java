package coldwright.terminal.console;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Says of a name that is not known that the snippet which has it did not get to its end: the usual
 * words would send the reader after a slip that isn't there.
 */
public final class MissingNameText {
    private static final Pattern UNKNOWN = Pattern.compile("`(\\w+)[^`]*` is not known here[;,].*");

    private final Map<String, String> failed = new LinkedHashMap<>();

    /**
     * A snippet did not get to its end.
     *
     * @param which what to call it
     * @param code its text
     */
    public void failed(String which, String code) {
        failed.put(which, code);
    }

    /** The words, or what they should say instead. */
    public String why(String words) {
        Matcher unknown = UNKNOWN.matcher(words);
        if (!unknown.find()) {
            return words;
        }
        String name = unknown.group(1);
        Optional<String> which =
                failed.keySet().stream().filter(one -> has(failed.get(one), name)).findFirst();
        return which.map(
                        one ->
                                unknown.replaceFirst(
                                        Matcher.quoteReplacement(
                                                "`%s` is not known here: %s did not get to its end"
                                                        .formatted(name, one))))
                .orElse(words);
    }

    private static boolean has(String code, String name) {
        return Pattern.compile("\\b" + name + "\\b").matcher(code).find();
    }
}
