package coldwright.lesson;

import static coldwright.lesson.FaultList.require;

import coldwright.source.JavaSource;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the comment after a verified number: {@code <!-- = EXPRESSION within 0.5 -->}. */
final class VerifiedNumberReader {
    private static final String EXAMPLE = "`−2.6<!-- = curve.initialFreezingPointC() -->`";
    private static final String WITHIN = " within ";
    private static final int LONGEST_EXPRESSION = 1000;

    /** Longest text before the comment that is searched for the number. */
    static final int FAR_BACK = 60;

    private static final Pattern COMMENT =
            Pattern.compile("<!--\\s*=(?!=)(.*?)-->", Pattern.DOTALL);
    private static final Pattern NUMBER =
            Pattern.compile("(?:(?<![\\p{L}\\p{N}%)\\]])[+−-])?(?<![\\p{N}.])\\d+(?:\\.\\d+)?$");
    private static final Pattern SEPARATED =
            Pattern.compile("\\d(?:,|[\\u00A0\\u2009\\u202F])\\d+(?:\\.\\d+)?$");

    private VerifiedNumberReader() {}

    /** Whether a comment is for a verified number; others are the author's own. */
    static boolean isMeant(String comment) {
        return COMMENT.matcher(comment).lookingAt();
    }

    /** A line without the comments of verified numbers. */
    static String without(String line) {
        return COMMENT.matcher(line).replaceAll("");
    }

    /**
     * Reads a comment with its delimiters, on a line of the file, after a text; empty if invalid.
     */
    static Optional<VerifiedNumber> read(
            String before, String comment, int line, FaultList faults) {
        Matcher inside = COMMENT.matcher(comment);
        if (!inside.lookingAt()) {
            throw new IllegalArgumentException(comment);
        }
        String near = before.substring(Math.max(0, before.length() - FAR_BACK));
        String said = " " + inside.group(1).strip().replaceAll("\\s+", " ");
        List<Integer> places = JavaSource.of(said).unquoted(WITHIN);
        int mark = places.isEmpty() ? said.length() : places.get(places.size() - 1);
        String expression = said.substring(0, mark).strip();
        Optional<String> within =
                places.isEmpty()
                        ? Optional.empty()
                        : Optional.of(said.substring(mark + WITHIN.length()).strip());
        return faults.read(
                line,
                () -> {
                    require(!SEPARATED.matcher(near).find(), "number.separated");
                    Matcher number = NUMBER.matcher(near);
                    require(number.find(), "number.none", expression, EXAMPLE);
                    requireExpression(expression);
                    within.ifPresent(VerifiedNumberReader::requireTolerance);
                    String written = number.group();
                    return within.map(NumberParser::parse)
                            .map(far -> new VerifiedNumber(line, written, expression, far))
                            .orElse(VerifiedNumber.toItsLastDigit(line, written, expression));
                });
    }

    private static void requireExpression(String expression) {
        require(!expression.isEmpty(), "number.no-expression", EXAMPLE);
        require(
                expression.length() <= LONGEST_EXPRESSION,
                "number.long",
                expression.length(),
                LONGEST_EXPRESSION);
        require(JavaSource.of(expression).isBalanced(), "number.brackets", expression);
        require(JavaSource.of(expression).namesSomething(), "number.no-name", expression, EXAMPLE);
    }

    private static void requireTolerance(String within) {
        boolean fit = within.matches(NumberParser.PATTERN) && NumberParser.parse(within) >= 0;
        require(fit, "number.tolerance", within);
    }
}
