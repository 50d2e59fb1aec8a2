package coldwright.bench.complete;

import coldwright.bench.compile.MaskedSource;

import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Documentation;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the type of what stands before a point. */
final class ReceiverType {
    private static final Pattern NAME_AT_END = Pattern.compile("[\\p{L}\\p{N}_$]+$");
    private static final Pattern TYPE_NAME =
            Pattern.compile("(?:[\\w$]+\\.)*[A-Z][\\w$]*[a-z][\\w$]*");
    private static final Pattern NEW_AT_END = Pattern.compile("\\bnew\\s+$");
    private static final Pattern BEHIND_A_TYPE = Pattern.compile("<.*>|\\([^()]*\\)");

    private final SourceCodeAnalysis analysis;

    ReceiverType(SourceCodeAnalysis analysis) {
        this.analysis = analysis;
    }

    /**
     * The expression whose member is being named.
     *
     * @param before a statement up to the name
     * @return the expression; empty if no point stands there
     */
    static Optional<String> expression(String before) {
        String masked = MaskedSource.of(before, 'q');
        int end = masked.stripTrailing().length();
        if (masked.startsWith("::", end - 2)) {
            end -= 2;
        } else if (masked.startsWith(".", end - 1)) {
            end -= 1;
        } else {
            return Optional.empty();
        }
        int start = startOf(masked, end);
        String expression = before.substring(start, end).strip();
        return expression.isEmpty() ? Optional.empty() : Optional.of(expression);
    }

    private static int startOf(String masked, int end) {
        int at = end;
        while (true) {
            int last = spacesBefore(masked, at);
            int operand = operandBefore(masked, last);
            if (operand < 0) {
                return at;
            }
            at = operand;
            int point = spacesBefore(masked, at);
            if (point > 0 && masked.charAt(point - 1) == '.') {
                at = point - 1;
                continue;
            }
            Matcher made = NEW_AT_END.matcher(masked.substring(0, at));
            return made.find() ? made.start() : at;
        }
    }

    private static int spacesBefore(String masked, int at) {
        return masked.substring(0, at).stripTrailing().length();
    }

    /** Where a name, a call, a bracket or a text that ends here begins; below zero if none does. */
    private static int operandBefore(String masked, int end) {
        int at = end;
        while (at > 0 && (masked.charAt(at - 1) == ')' || masked.charAt(at - 1) == ']')) {
            int open = openingOf(masked, at - 1);
            if (open < 0) {
                return -1;
            }
            at = open;
        }
        Matcher name = NAME_AT_END.matcher(masked.substring(0, at));
        if (name.find()) {
            return name.start();
        }
        return at < end ? at : -1;
    }

    private static int openingOf(String masked, int closing) {
        int depth = 0;
        for (int i = closing; i >= 0; i--) {
            char here = masked.charAt(i);
            depth += ")]}".indexOf(here) >= 0 ? 1 : "([{".indexOf(here) >= 0 ? -1 : 0;
            if (depth == 0) {
                return i;
            }
        }
        return -1;
    }

    /** A type before {@code ::}, if one stands there. */
    static Optional<String> referredType(String before) {
        return before.stripTrailing().endsWith("::")
                ? expression(before).filter(one -> TYPE_NAME.matcher(one).matches())
                : Optional.empty();
    }

    /**
     * Its type.
     *
     * @param before the statement up to the name
     * @param insert what may stand there
     * @return the type with its package where Java says it; empty if there is no point or no
     *     telling
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

    /** Within a lambda Java tells the type only by the way, in a method's signature. */
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
