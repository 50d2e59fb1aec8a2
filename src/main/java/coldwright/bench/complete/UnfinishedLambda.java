package coldwright.bench.complete;

import coldwright.source.JavaSource;
import coldwright.source.JavaToken;
import coldwright.source.JavaToken.Kind;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * An unfinished lambda. Java can't resolve its parameter within a call that isn't closed yet, so
 * the beginning of that call is omitted.
 */
final class UnfinishedLambda {
    private final JavaSource source;
    private final List<JavaToken> code;

    /** Indices of the arrow tokens whose enclosing brackets are all open. */
    private final List<Integer> arrows = new ArrayList<>();

    /** Indices of the open brackets, outermost first. */
    private final List<Integer> open = new ArrayList<>();

    private UnfinishedLambda(String statement) {
        source = JavaSource.of(statement);
        code = source.code();
        for (int i = 0; i < code.size(); i++) {
            JavaToken token = code.get(i);
            if (token.kind() == Kind.OPEN) {
                open.add(i);
            } else if (token.kind() == Kind.CLOSE && !open.isEmpty()) {
                int closed = open.remove(open.size() - 1);
                arrows.removeIf(arrow -> arrow > closed);
            } else if (source.is(token, "->")) {
                arrows.add(i);
            }
        }
    }

    /**
     * The parameter names of all unfinished lambdas, outermost first.
     *
     * @param statement the beginning of a statement
     */
    static List<String> parameters(String statement) {
        UnfinishedLambda lambda = new UnfinishedLambda(statement);
        List<String> names = new ArrayList<>();
        lambda.arrows.forEach(arrow -> names.addAll(lambda.parametersBefore(arrow)));
        return names;
    }

    /** The word before an arrow, or the last word of each part in the brackets before it. */
    private List<String> parametersBefore(int arrow) {
        if (arrow > 0 && code.get(arrow - 1).kind() == Kind.WORD) {
            return List.of(source.text(code.get(arrow - 1)));
        }
        Deque<String> names = new ArrayDeque<>();
        boolean last = arrow > 0 && source.is(code.get(arrow - 1), ")");
        for (int at = arrow - 2; at >= 0 && code.get(at).kind() != Kind.OPEN; at--) {
            if (last && code.get(at).kind() == Kind.WORD) {
                names.push(source.text(code.get(at)));
            }
            last = source.is(code.get(at), ",");
        }
        return List.copyOf(names);
    }

    /**
     * Removes the open calls within a lambda.
     *
     * @param statement the beginning of a statement
     * @return the beginning without them; empty if there is no such lambda or call
     */
    static Optional<String> withoutOpenCalls(String statement) {
        return new UnfinishedLambda(statement).withoutOpenCall();
    }

    private Optional<String> withoutOpenCall() {
        if (open.isEmpty() || !source.is(code.get(open.get(open.size() - 1)), "(")) {
            return Optional.empty();
        }
        int call = open.get(open.size() - 1);
        int arrow = call;
        while (arrow >= 0 && !source.is(code.get(arrow), "->")) {
            arrow--;
        }
        if (!arrows.contains(arrow)) {
            return Optional.empty();
        }
        int start = call - 1;
        while (!endsStatement(code.get(start))) {
            start--;
        }
        int end = code.get(call).end();
        int depth = 0;
        for (JavaToken token : code.subList(call + 1, code.size())) {
            depth += token.kind() == Kind.OPEN ? 1 : token.kind() == Kind.CLOSE ? -1 : 0;
            if (depth == 0 && source.is(token, ",")) {
                end = token.end();
            }
        }
        String text = source.text();
        return Optional.of(
                text.substring(0, code.get(start).end()) + " " + text.substring(end).strip());
    }

    private boolean endsStatement(JavaToken token) {
        return source.is(token, "->")
                || source.is(token, ";")
                || source.is(token, "{")
                || source.is(token, "}");
    }
}
