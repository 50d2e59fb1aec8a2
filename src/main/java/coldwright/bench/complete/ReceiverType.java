package coldwright.bench.complete;

import coldwright.source.JavaSource;
import coldwright.source.JavaToken;
import coldwright.source.JavaToken.Kind;

import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Documentation;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds the type of the expression before a dot. */
final class ReceiverType {
    private static final Pattern TYPE_NAME =
            Pattern.compile("(?:[\\w$]+\\.)*[A-Z][\\w$]*[a-z][\\w$]*");
    private static final Pattern BEHIND_A_TYPE = Pattern.compile("<.*>|\\([^()]*\\)");

    private final SourceCodeAnalysis analysis;

    ReceiverType(SourceCodeAnalysis analysis) {
        this.analysis = analysis;
    }

    /**
     * The expression whose member is being typed.
     *
     * @param before the statement up to the name
     * @return empty if there is no dot
     */
    static Optional<String> expression(String before) {
        JavaSource source = JavaSource.of(before);
        List<JavaToken> code = source.code();
        int point = code.size() - 1;
        if (point < 0 || !source.is(code.get(point), ".") && !source.is(code.get(point), "::")) {
            return Optional.empty();
        }
        int start = startOf(source, code, point);
        return start == point
                ? Optional.empty()
                : Optional.of(
                        before.substring(code.get(start).start(), code.get(point).start()).strip());
    }

    /** The first token of the expression that ends before a token. */
    private static int startOf(JavaSource source, List<JavaToken> code, int end) {
        int at = operandBefore(code, end);
        while (at > 0 && at < end && source.is(code.get(at - 1), ".")) {
            int operand = operandBefore(code, at - 1);
            if (operand == at - 1) {
                break;
            }
            at = operand;
        }
        boolean made = at > 0 && at < end && source.isWord(code.get(at - 1), "new");
        return made ? at - 1 : at;
    }

    /**
     * The first token of the name, call, bracket or string before a token; itself if there is none.
     */
    private static int operandBefore(List<JavaToken> code, int end) {
        int at = end;
        while (at > 0 && code.get(at - 1).kind() == Kind.CLOSE) {
            int open = openingOf(code, at - 1);
            if (open < 0) {
                return end;
            }
            at = open;
        }
        if (at == 0) {
            return at;
        }
        JavaToken before = code.get(at - 1);
        boolean operand =
                before.isQuoted() || before.kind() == Kind.WORD || before.kind() == Kind.NUMBER;
        return operand ? at - 1 : at;
    }

    private static int openingOf(List<JavaToken> code, int closing) {
        int depth = 0;
        for (int i = closing; i >= 0; i--) {
            Kind kind = code.get(i).kind();
            depth += kind == Kind.CLOSE ? 1 : kind == Kind.OPEN ? -1 : 0;
            if (depth == 0) {
                return i;
            }
        }
        return -1;
    }

    /** The type before {@code ::}, if there is one. */
    static Optional<String> referredType(String before) {
        return before.stripTrailing().endsWith("::")
                ? expression(before).filter(one -> TYPE_NAME.matcher(one).matches())
                : Optional.empty();
    }

    /**
     * The type of the expression.
     *
     * @param before the statement up to the name
     * @param insert a valid name there
     * @return the type, with its package if Java gives it; empty if there is no dot or the type is
     *     unknown
     */
    String type(String before, String insert) {
        Optional<String> expression = expression(before);
        if (expression.isEmpty()) {
            return "";
        }
        if (TYPE_NAME.matcher(expression.get()).matches()) {
            return expression.get();
        }
        String type = analysis.analyzeType(expression.get(), 0);
        if (type != null && !type.isEmpty()) {
            return type;
        }
        int bracket = insert.indexOf('(');
        return bracket < 0
                ? ""
                : documented(
                        before + insert.substring(0, bracket + 1), insert.substring(0, bracket));
    }

    /** Within a lambda Java gives the type only in a method's signature. */
    private String documented(String call, String name) {
        for (Documentation one : analysis.documentation(call, call.length(), false)) {
            int point = one.signature().indexOf("." + name + "(");
            if (point > 0) {
                String owner = one.signature().substring(0, point);
                // newer Java adds a record's components and a type's parameters
                String bare = BEHIND_A_TYPE.matcher(owner).replaceAll("");
                return bare.substring(bare.lastIndexOf(' ') + 1);
            }
        }
        return "";
    }
}
