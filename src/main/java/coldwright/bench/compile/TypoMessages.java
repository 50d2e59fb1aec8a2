package coldwright.bench.compile;

import coldwright.source.JavaSource;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Messages for typos that are visible in the text itself, whatever the compiler reports. */
final class TypoMessages {
    /** A pattern of invalid Java and its message; the first group is the position. */
    private record Typo(String key, UnaryOperator<String> fix, Pattern pattern) {}

    private static final String TYPES = "(?:double|int|long|boolean|var|String)";

    private static final String WORDS =
            "double|int|long|boolean|var|String|if|else|for|while|return|new";

    private static final List<Typo> TYPOS =
            List.of(
                    typo(
                            "sentence",
                            "(?m)\\A\\s*(\\p{L}+(?:[ ,:]+[\\p{L}\\d'’-]+){2,}[.!?]?)\\s*$"),
                    typo(
                            "capital",
                            word -> word.toLowerCase(Locale.ROOT),
                            "\\A\\s*((?:For|While|If|Switch|Else|Do|Try|Return))\\b(?=\\s*[({\\w])"),
                    typo("name", "\\b" + TYPES + "\\s+(\\d\\w*|%)"),
                    typo(
                            "space",
                            TypoMessages::joined,
                            "\\b" + TYPES + " +([\\p{L}_]\\w*(?: +\\p{L}\\w*)+)(?= *=)"),
                    typo("point", TypoMessages::withPoint, "(?<![\\w(,.])(\\d+,\\d+)(?![\\w.)])"),
                    typo("and", "\\s(and)\\s"),
                    typo("or", "\\s(or)\\s"),
                    typo("times", "(?<=[\\w)]) +([xX]) +(?=[\\w(])"),
                    typo("parenthesis", "(?<![\\w.])(\\d+(?:\\.\\d+)? *\\()"),
                    typo("for", "\\A\\s*for\\s*(\\([^;()]*,[^;()]*,[^;()]*\\))"),
                    typo("list", "=\\s*(\\[[^\\[\\]]*\\])"),
                    typo(
                            "unit",
                            "(?<![\\w.])(\\d+(?:\\.\\d+)?[ \\t]*(?![dDfFlLxXeE]\\b|[xXeE]\\d|(?:"
                                    + WORDS
                                    + ")\\b)[\\p{L}°][\\p{L}%°]*)"),
                    typo("unit", "(?<![\\w.])(\\d+(?:\\.\\d+)?[ \\t]*%)(?=\\s*[;,)])"));

    private TypoMessages() {}

    private static Typo typo(String key, String pattern) {
        return typo(key, found -> "", pattern);
    }

    private static Typo typo(String key, UnaryOperator<String> fix, String pattern) {
        return new Typo("typo." + key, fix, Pattern.compile(pattern));
    }

    /** The first typo in the statement. */
    static Optional<CompileProblem> of(CompilerDiagnostic error) {
        String statement = JavaSource.of(error.statement()).masked('q');
        for (Typo typo : TYPOS) {
            Matcher found = typo.pattern().matcher(statement);
            if (found.find()) {
                String written = found.group(1);
                String words = ErrorText.of(typo.key(), written, typo.fix().apply(written));
                return Optional.of(error.complaint(words, found.start(1), found.end(1)));
            }
        }
        return Optional.empty();
    }

    /** The message for a number like {@code 1,5}. */
    static String decimalPoint(String written) {
        return ErrorText.of("typo.point", written, withPoint(written));
    }

    private static String withPoint(String written) {
        return written.replace(',', '.');
    }

    private static String joined(String words) {
        StringBuilder joined = new StringBuilder();
        for (String word : words.split(" +")) {
            joined.append(
                    joined.length() == 0
                            ? word
                            : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
        }
        return joined.toString();
    }
}
