package coldwright.lesson;

import java.util.regex.Pattern;

/** Tells a published source from a reason of the author's own, by its words. */
final class PublishedSource {
    /** A year is a number of four digits that is no part of a longer one and has no unit. */
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
