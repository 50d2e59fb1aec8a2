package coldwright.lesson;

import static coldwright.lesson.FaultList.text;

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
     * Reads the comment of a verified number.
     *
     * @param before the text before it
     * @param comment the comment with its delimiters
     * @param line its line in the file
     * @param faults collects the faults
     * @return the number, if valid
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
        Optional<String> fault =
                faultOfNumber(near, expression)
                        .or(() -> faultOf(expression))
                        .or(() -> within.flatMap(VerifiedNumberReader::faultOfTolerance));
        if (fault.isPresent()) {
            faults.add(line, fault.get());
            return Optional.empty();
        }
        Matcher number = NUMBER.matcher(near);
        if (!number.find()) {
            throw new AssertionError(near);
        }
        VerifiedNumber verifiedNumber =
                VerifiedNumber.toItsLastDigit(line, number.group(), expression);
        return Optional.of(
                within.map(NumberParser::parse)
                        .map(
                                far ->
                                        new VerifiedNumber(
                                                line, verifiedNumber.written(), expression, far))
                        .orElse(verifiedNumber));
    }

    private static Optional<String> faultOfNumber(String near, String expression) {
        if (SEPARATED.matcher(near).find()) {
            return Optional.of(text("number.separated"));
        }
        return NUMBER.matcher(near).find()
                ? Optional.empty()
                : Optional.of(text("number.none", expression, EXAMPLE));
    }

    private static Optional<String> faultOf(String expression) {
        if (expression.isEmpty()) {
            return Optional.of(text("number.no-expression", EXAMPLE));
        }
        if (expression.length() > LONGEST_EXPRESSION) {
            return Optional.of(text("number.long", expression.length(), LONGEST_EXPRESSION));
        }
        if (!JavaSource.of(expression).isBalanced()) {
            return Optional.of(text("number.brackets", expression));
        }
        return JavaSource.of(expression).namesSomething()
                ? Optional.empty()
                : Optional.of(text("number.no-name", expression, EXAMPLE));
    }

    private static Optional<String> faultOfTolerance(String within) {
        boolean fit = within.matches(NumberParser.PATTERN) && NumberParser.parse(within) >= 0;
        return fit ? Optional.empty() : Optional.of(text("number.tolerance", within));
    }
}
