package coldwright.bench.compile;

import coldwright.source.JavaSource;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Messages for typos that are visible in the text itself, whatever the compiler reports. */
final class TypoMessages {
    /** A pattern of invalid Java and its message; the first group is the position. */
    private record TypoPattern(Pattern pattern, Function<MatchResult, String> words) {}

    private static final String TYPES = "(?:double|int|long|boolean|var|String)";

    private static final String WORDS =
            "double|int|long|boolean|var|String|if|else|for|while|return|new";

    private static final List<TypoPattern> PATTERNS =
            List.of(
                    firstMatch(
                            "(?m)\\A\\s*(\\p{L}+(?:[ ,:]+[\\p{L}\\d'’-]+){2,}[.!?]?)\\s*$",
                            any ->
                                    "this reads like a sentence, not like Java; begin a remark with `//`"),
                    firstMatch(
                            "\\A\\s*((?:For|While|If|Switch|Else|Do|Try|Return))\\b(?=\\s*[({\\w])",
                            found ->
                                    "`%s` is written with small letters: `%s`"
                                            .formatted(
                                                    found.group(1),
                                                    found.group(1).toLowerCase(Locale.ROOT))),
                    firstMatch(
                            "\\b" + TYPES + "\\s+(\\d\\w*|%)",
                            found ->
                                    "`%s` can't be a name; a name begins with a letter"
                                            .formatted(found.group(1))),
                    firstMatch(
                            "\\b" + TYPES + " +([\\p{L}_]\\w*(?: +\\p{L}\\w*)+)(?= *=)",
                            found ->
                                    "`%s` can't be a name, since it has a space; write `%s`"
                                            .formatted(found.group(1), joined(found.group(1)))),
                    firstMatch(
                            "(?<![\\w(,.])(\\d+,\\d+)(?![\\w.)])",
                            found -> decimalPoint(found.group(1))),
                    firstMatch(
                            "\\s(and|or)\\s",
                            found ->
                                    found.group(1).equals("and")
                                            ? "`and` is written `&&`"
                                            : "`or` is written `||`"),
                    firstMatch(
                            "(?<=[\\w)]) +([xX]) +(?=[\\w(])",
                            found -> "multiply with `*`, not with `%s`".formatted(found.group(1))),
                    firstMatch(
                            "(?<![\\w.])(\\d+(?:\\.\\d+)? *\\()",
                            any -> "a sign is missing before `(`; multiply with `*`"),
                    firstMatch(
                            "\\A\\s*for\\s*(\\([^;()]*,[^;()]*,[^;()]*\\))",
                            any ->
                                    "the three parts of a `for` are parted by semicolons: `for (int i = 0; i < 3; i++)`"),
                    firstMatch(
                            "=\\s*(\\[[^\\[\\]]*\\])",
                            any ->
                                    "a list is written `List.of(1, 2, 3)`, an array `{1, 2, 3}`; no square brackets"),
                    firstMatch(
                            "(?<![\\w.])(\\d+(?:\\.\\d+)?[ \\t]*(?![dDfFlLxXeE]\\b|[xXeE]\\d|(?:"
                                    + WORDS
                                    + ")\\b)[\\p{L}°][\\p{L}%°]*)",
                            found -> notANumber(found.group(1))),
                    firstMatch(
                            "(?<![\\w.])(\\d+(?:\\.\\d+)?[ \\t]*%)(?=\\s*[;,)])",
                            found -> notANumber(found.group(1))));

    private TypoMessages() {}

    private static TypoPattern firstMatch(String pattern, Function<MatchResult, String> words) {
        return new TypoPattern(Pattern.compile(pattern), words);
    }

    /** The first typo in the statement. */
    static Optional<CompileProblem> of(CompilerDiagnostic compilerDiagnostic) {
        String statement = JavaSource.of(compilerDiagnostic.statement()).masked('q');
        for (TypoPattern typoPattern : PATTERNS) {
            Matcher found = typoPattern.pattern().matcher(statement);
            if (found.find()) {
                return Optional.of(
                        compilerDiagnostic.complaint(
                                typoPattern.words().apply(found), found.start(1), found.end(1)));
            }
        }
        return Optional.empty();
    }

    /** The message for a number like {@code 1,5}. */
    static String decimalPoint(String written) {
        return "a decimal number is written with a point: `%s`, not `%s`"
                .formatted(written.replace(',', '.'), written);
    }

    private static String notANumber(String written) {
        return "`%s` is not a number; leave the unit away, or put it into the name"
                .formatted(written);
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
