package coldwright.bench.compile;

import coldwright.source.JavaSource;
import coldwright.source.JavaToken;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Messages for text that isn't valid Java syntax. */
final class SyntaxMessages {
    private static final Pattern EXPECTED = Pattern.compile("^(.+) expected");
    private static final Map<String, String> ODD_SIGNS =
            Map.ofEntries(
                    Map.entry("×", "multiply with `*`"),
                    Map.entry("·", "multiply with `*`"),
                    Map.entry("÷", "divide with `/`"),
                    Map.entry("−", "write the minus of the keyboard, `-`"),
                    Map.entry("–", "write the minus of the keyboard, `-`"),
                    Map.entry("“", "put text between straight quotes, `\"`"),
                    Map.entry("”", "put text between straight quotes, `\"`"),
                    Map.entry("„", "put text between straight quotes, `\"`"),
                    Map.entry("’", "put text between straight quotes, `\"`"),
                    Map.entry("°", "leave the unit away"),
                    Map.entry("²", "multiply the value with itself"),
                    Map.entry("#", "begin a remark with `//`"));
    private static final Set<String> EXPECTED_TOO = Set.of("illegal.start.of.type", "dot.class");
    private static final Set<String> SHOWN_IN_THE_TEXT =
            Set.of("illegal.start.of.expr", "illegal.start.of.stmt", "not.stmt", "premature.eof");

    private SyntaxMessages() {}

    static Optional<CompileProblem> of(CompilerDiagnostic compilerDiagnostic) {
        boolean expected =
                compilerDiagnostic.code().contains("expected")
                        || EXPECTED_TOO.contains(compilerDiagnostic.code());
        if (expected || SHOWN_IN_THE_TEXT.contains(compilerDiagnostic.code())) {
            Optional<CompileProblem> slip = TypoMessages.of(compilerDiagnostic);
            if (slip.isPresent()) {
                return slip;
            }
        }
        return expected
                ? Optional.of(compilerDiagnostic.complaint(missingSign(compilerDiagnostic)))
                : words(compilerDiagnostic).map(compilerDiagnostic::complaint);
    }

    private static Optional<String> words(CompilerDiagnostic compilerDiagnostic) {
        switch (compilerDiagnostic.code()) {
            case "premature.eof":
                return Optional.of(tooEarly(compilerDiagnostic));
            case "illegal.start.of.expr":
            case "illegal.start.of.stmt":
                return Optional.of(missing(compilerDiagnostic));
            case "unclosed.str.lit":
                return Optional.of("this text has no end; close it with `\"` on the same line");
            case "unclosed.char.lit":
            case "empty.char.lit":
                return Optional.of(
                        "single quotes hold one character; put text between double quotes: `\"…\"`");
            case "unclosed.comment":
                return Optional.of("this remark has no end; close it with `*/`");
            case "illegal.char":
                return Optional.of(oddSign(compilerDiagnostic));
            case "int.number.too.large":
                return Optional.of(
                        "%s is too large for a whole number; write it with a point: `%s.0`"
                                .formatted(
                                        digitsAt(compilerDiagnostic),
                                        digitsAt(compilerDiagnostic)));
            case "not.stmt":
                if (compilerDiagnostic.source().equals("then")) {
                    return Optional.of(
                            "there is no `then` in Java; what is to be done stands right after the condition");
                }
                return Optional.of(
                        "`%s` alone does nothing; give it a name, or call something with it"
                                .formatted(compilerDiagnostic.source()));
            case "variable.not.allowed":
                return Optional.of(
                        "a variable can't be declared here alone; put braces around it: `{ … }`");
            case "else.without.if":
                return Optional.of("this `else` has no `if` before it");
            case "orphaned":
                return Optional.of(
                        "this `%s` stands outside of a `switch`"
                                .formatted(compilerDiagnostic.source()));
            default:
                return Optional.empty();
        }
    }

    private static String missingSign(CompilerDiagnostic compilerDiagnostic) {
        String sign = compilerDiagnostic.inMessage(EXPECTED, 1);
        String after = compilerDiagnostic.wordBefore(compilerDiagnostic.at());
        if (sign.equals("';'")) {
            return "a semicolon is missing after `%s`".formatted(after);
        }
        if (sign.startsWith("')'")
                && compilerDiagnostic.text().startsWith(";", compilerDiagnostic.at())) {
            return "a `)` is missing before `;`";
        }
        if (sign.equals("<identifier>")) {
            return "a name is missing after `%s`".formatted(after);
        }
        if (sign.startsWith("class, interface")) {
            return "there is a `}` too many";
        }
        if (sign.isEmpty()) {
            return missing(compilerDiagnostic);
        }
        return "%s is missing after `%s`".formatted(sign.replace('\'', '`'), after);
    }

    private static String tooEarly(CompilerDiagnostic compilerDiagnostic) {
        JavaSource statement =
                JavaSource.of(
                        compilerDiagnostic.text().substring(compilerDiagnostic.statementStart()));
        List<JavaToken> open = statement.openBrackets();
        if (!open.isEmpty()) {
            JavaToken last = open.get(open.size() - 1);
            int place = compilerDiagnostic.statementStart() + last.start();
            return "a `%s` is missing: the `%s` in line %d is never closed"
                    .formatted(
                            statement.closing(last),
                            statement.text(last),
                            LineIndex.lineAt(compilerDiagnostic.text(), place));
        }
        if (compilerDiagnostic.statement().strip().startsWith("else")) {
            return "this `else` has no `if` before it";
        }
        if (compilerDiagnostic.text().indexOf('}', compilerDiagnostic.statementStart()) >= 0) {
            return "there is a `}` too many";
        }
        return "the snippet ends too early after `%s`"
                .formatted(compilerDiagnostic.wordBefore(compilerDiagnostic.text().length()));
    }

    private static String missing(CompilerDiagnostic compilerDiagnostic) {
        String source = compilerDiagnostic.source().strip();
        if (source.startsWith("}")) {
            return "there is a `}` too many";
        }
        if (source.isEmpty()
                || compilerDiagnostic.at() >= compilerDiagnostic.text().stripTrailing().length()) {
            return "something is missing after `%s`"
                    .formatted(compilerDiagnostic.wordBefore(compilerDiagnostic.at()));
        }
        return "something is missing before `%s`".formatted(source);
    }

    private static String oddSign(CompilerDiagnostic compilerDiagnostic) {
        String sign =
                compilerDiagnostic
                        .text()
                        .substring(
                                compilerDiagnostic.at(),
                                Math.min(
                                        compilerDiagnostic.text().length(),
                                        compilerDiagnostic.at() + 1));
        String mend = ODD_SIGNS.getOrDefault(sign, "leave it away or write it in a text");
        return "`%s` is no sign of Java; %s".formatted(sign, mend);
    }

    private static String digitsAt(CompilerDiagnostic compilerDiagnostic) {
        JavaSource source = JavaSource.of(compilerDiagnostic.text());
        return source.at(compilerDiagnostic.at())
                .filter(token -> token.kind() == JavaToken.Kind.NUMBER)
                .map(source::text)
                .orElseGet(compilerDiagnostic::source);
    }
}
