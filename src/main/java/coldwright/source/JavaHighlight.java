package coldwright.source;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

import javax.lang.model.SourceVersion;

/**
 * A range of Java text with its own colour.
 *
 * @param start where it begins, characters from the text's start
 * @param end where it ends, exclusive
 * @param kind its kind
 */
public record JavaHighlight(int start, int end, Kind kind) {
    /** Contextual keywords, which {@link SourceVersion} treats as names. */
    private static final Set<String> SOMETIMES_KEYWORDS =
            Set.of("var", "record", "sealed", "permits", "yield");

    private static final Pattern DIAL =
            Pattern.compile("//\\s*dial\\s+[-−.\\d]+\\s+to\\s+[-−.\\d]+.*");

    /** The kinds of Java text that differ in colour. */
    public enum Kind {
        KEYWORD,
        TYPE,
        CONSTANT,
        NUMBER,
        STRING,
        COMMENT,
        DIAL;

        /** The CSS class, such as {@code java-number}. */
        public String look() {
            return "java-" + name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Finds the coloured ranges.
     *
     * @param java the text, perhaps unfinished
     * @return in order, without overlaps; plain names and operators are left out
     */
    public static List<JavaHighlight> in(String java) {
        JavaSource source = JavaSource.of(java);
        return source.tokens().stream()
                .flatMap(
                        token ->
                                kind(source, token)
                                        .map(
                                                it ->
                                                        new JavaHighlight(
                                                                token.start(), token.end(), it))
                                        .stream())
                .toList();
    }

    private static Optional<Kind> kind(JavaSource source, JavaToken token) {
        return switch (token.kind()) {
            case BLOCK_COMMENT -> Optional.of(Kind.COMMENT);
            case LINE_COMMENT ->
                    Optional.of(
                            DIAL.matcher(source.text(token)).matches() ? Kind.DIAL : Kind.COMMENT);
            case STRING, TEXT_BLOCK, CHARACTER -> Optional.of(Kind.STRING);
            case NUMBER -> Optional.of(Kind.NUMBER);
            case WORD -> ofWord(source.text(token));
            case WHITESPACE, OPEN, CLOSE, OPERATOR -> Optional.empty();
        };
    }

    private static Optional<Kind> ofWord(String word) {
        if (SourceVersion.isKeyword(word) || SOMETIMES_KEYWORDS.contains(word)) {
            return Optional.of(Kind.KEYWORD);
        }
        if (!Character.isUpperCase(word.charAt(0))) {
            return Optional.empty();
        }
        boolean shouted = word.length() > 1 && word.equals(word.toUpperCase(Locale.ROOT));
        return Optional.of(shouted ? Kind.CONSTANT : Kind.TYPE);
    }
}
