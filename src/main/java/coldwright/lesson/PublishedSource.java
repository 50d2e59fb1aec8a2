package coldwright.lesson;

import java.util.regex.Pattern;

/** Distinguishes a published source from an author's own reason, by its words. */
final class PublishedSource {
    /** A year is a four-digit number that isn't part of a longer one and has no unit. */
    private static final Pattern NAMED =
            Pattern.compile(
                    "(?<![\\d.,−-])(?:1[5-9]|20)\\d\\d(?![\\d%°]|[.,]\\d|\\s?(?:%|°|g|kg|ml|mL|W|J|s|K)(?![\\p{L}]))"
                            + "|\\b(?:[Hh]andbook|USDA|Codex|CFR)\\b");

    private static final Pattern DENIED =
            Pattern.compile("\\b(?:from memory|no source)\\b", Pattern.CASE_INSENSITIVE);

    private PublishedSource() {}

    static boolean isNamedIn(String source) {
        return NAMED.matcher(source).find() && !DENIED.matcher(source).find();
    }
}
