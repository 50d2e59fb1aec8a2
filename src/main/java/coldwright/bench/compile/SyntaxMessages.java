package coldwright.bench.compile;

import coldwright.source.JavaSource;
import coldwright.source.JavaToken;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Messages for text that isn't valid Java syntax. */
final class SyntaxMessages {
    private static final Pattern EXPECTED = Pattern.compile("^(.+) expected");
    private static final Set<String> EXPECTED_TOO = Set.of("illegal.start.of.type", "dot.class");
    private static final Set<String> SHOWN_IN_THE_TEXT =
            Set.of("illegal.start.of.expr", "illegal.start.of.stmt", "not.stmt", "premature.eof");

    private SyntaxMessages() {}

    static Optional<CompileProblem> of(CompilerDiagnostic error) {
        boolean expected = error.code().contains("expected") || EXPECTED_TOO.contains(error.code());
        if (expected || SHOWN_IN_THE_TEXT.contains(error.code())) {
            Optional<CompileProblem> typo = TypoMessages.of(error);
            if (typo.isPresent()) {
                return typo;
            }
        }
        return expected
                ? Optional.of(error.complaint(missingSymbol(error)))
                : words(error).map(error::complaint);
    }

    private static Optional<String> words(CompilerDiagnostic error) {
        return switch (error.code()) {
            case "premature.eof" -> Optional.of(tooEarly(error));
            case "illegal.start.of.expr", "illegal.start.of.stmt" -> Optional.of(missing(error));
            case "illegal.char" -> {
                String symbol = symbolAt(error.text(), error.at());
                String fix = ErrorText.or("odd-symbol." + symbol, "odd-symbol.other");
                yield Optional.of(ErrorText.of("odd-symbol", symbol, fix));
            }
            case "int.number.too.large" -> {
                String digits = digitsAt(error);
                yield Optional.of(ErrorText.of("too-large", digits, digits));
            }
            case "not.stmt" ->
                    error.source().equals("then")
                            ? Optional.of(ErrorText.of("then"))
                            : Optional.empty();
            default -> Optional.empty();
        };
    }

    private static String missingSymbol(CompilerDiagnostic error) {
        String symbol = error.inMessage(EXPECTED, 1);
        String after = error.wordBefore(error.at());
        if (symbol.equals("';'")) {
            return ErrorText.of("semicolon", after);
        }
        if (symbol.startsWith("')'") && error.text().startsWith(";", error.at())) {
            return ErrorText.of("parenthesis");
        }
        if (symbol.equals("<identifier>")) {
            return ErrorText.of("name-missing", after);
        }
        if (symbol.startsWith("class, interface")) {
            return ErrorText.of("brace");
        }
        return symbol.isEmpty()
                ? missing(error)
                : ErrorText.of("missing", symbol.replace('\'', '`'), after);
    }

    private static String tooEarly(CompilerDiagnostic error) {
        String text = error.text();
        JavaSource statement = JavaSource.of(text.substring(error.statementStart()));
        List<JavaToken> open = statement.openBrackets();
        if (!open.isEmpty()) {
            JavaToken last = open.get(open.size() - 1);
            return ErrorText.of(
                    "never-closed",
                    statement.closing(last),
                    statement.text(last),
                    LineIndex.lineAt(text, error.statementStart() + last.start()));
        }
        if (error.statement().strip().startsWith("else")) {
            return ErrorText.of("error.else.without.if");
        }
        return text.indexOf('}', error.statementStart()) >= 0
                ? ErrorText.of("brace")
                : ErrorText.of("too-early", error.wordBefore(text.length()));
    }

    private static String missing(CompilerDiagnostic error) {
        String source = error.source().strip();
        if (source.startsWith("}")) {
            return ErrorText.of("brace");
        }
        return source.isEmpty() || error.at() >= error.text().stripTrailing().length()
                ? ErrorText.of("missing-after", error.wordBefore(error.at()))
                : ErrorText.of("missing-before", source);
    }

    private static String symbolAt(String text, int at) {
        return text.substring(at, Math.min(text.length(), at + 1));
    }

    private static String digitsAt(CompilerDiagnostic error) {
        JavaSource source = JavaSource.of(error.text());
        return source.at(error.at())
                .filter(token -> token.kind() == JavaToken.Kind.NUMBER)
                .map(source::text)
                .orElseGet(error::source);
    }
}
