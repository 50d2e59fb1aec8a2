package coldwright.bench.complete;

import coldwright.source.JavaSource;
import coldwright.source.JavaToken;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A block around a caret: the declarations in its head, and the text after its brace. So code in a
 * method or a loop can be analysed on its own.
 *
 * @param declarations statements that declare the same names as the head, with any value
 * @param body the text after the brace
 */
record EnclosingBlock(List<String> declarations, String body) {
    private static final Pattern METHOD =
            Pattern.compile(
                    "^(?:(?:public|private|protected|static|final)\\s+)*(?!(?:new|return|else|throw|record|class|enum|interface)\\b)[\\p{L}_$][\\w$<>\\[\\],.? ]*\\s+[\\p{L}_$][\\w$]*\\s*\\(([^()]*)\\)\\s*(?:throws\\s+[\\w., ]+)?$");
    private static final Pattern EACH =
            Pattern.compile("(?s).*\\bfor\\s*\\(\\s*(?:final\\s+)?([^;:]+):(.*)\\)\\s*$");
    private static final Pattern COUNTED = Pattern.compile("(?s).*\\bfor\\s*\\(([^;]*);.*\\)\\s*$");
    private static final Pattern PLAIN =
            Pattern.compile("(?s)^(?:if|else|while|do|try|switch|for|synchronized)\\b.*");
    private static final Pattern COMMA = Pattern.compile(",(?![^<]*>)");

    EnclosingBlock {
        declarations = List.copyOf(declarations);
    }

    /**
     * Finds the outermost block of a statement that is still open.
     *
     * @param statement the beginning of a statement
     * @return empty if there is none, or its head can't be omitted
     */
    static Optional<EnclosingBlock> of(String statement) {
        JavaSource source = JavaSource.of(statement);
        List<JavaToken> open = source.openBrackets();
        if (open.isEmpty() || !source.is(open.get(0), "{")) {
            return Optional.empty();
        }
        int brace = open.get(0).start();
        String head = statement.substring(0, brace).strip();
        return declarations(head)
                .map(names -> new EnclosingBlock(names, statement.substring(brace + 1)));
    }

    private static Optional<List<String>> declarations(String head) {
        Matcher each = EACH.matcher(head);
        if (each.matches()) {
            String name = each.group(1).strip();
            String all = each.group(2).strip();
            return Optional.of(
                    List.of(
                            "%s = (%s)[0];".formatted(name, all),
                            "%s = (%s).iterator().next();".formatted(name, all)));
        }
        Matcher counted = COUNTED.matcher(head);
        if (counted.matches()) {
            String first = counted.group(1).strip();
            return Optional.of(first.isEmpty() ? List.of() : List.of(first + ";"));
        }
        Matcher method = METHOD.matcher(head);
        if (method.matches()) {
            return Optional.of(
                    COMMA.splitAsStream(method.group(1))
                            .map(one -> one.replace("...", "[]").replaceAll("\\bfinal\\b", ""))
                            .filter(one -> !one.isBlank())
                            .map(one -> one.strip() + ";")
                            .toList());
        }
        return PLAIN.matcher(head).matches() ? Optional.of(List.of()) : Optional.empty();
    }
}
