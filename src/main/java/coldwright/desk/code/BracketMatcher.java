package coldwright.desk.code;

import coldwright.source.JavaSource;
import coldwright.source.JavaToken;
import coldwright.source.JavaToken.Kind;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** Finds the partner of the bracket beside the caret. */
final class BracketMatcher {
    /**
     * A pair of brackets.
     *
     * @param open index of the first
     * @param close index of the second
     */
    record Pair(int open, int close) {}

    private BracketMatcher() {}

    /**
     * The pair at the caret; of two, the one before the caret.
     *
     * @param java the text
     * @param caret index of the caret
     * @return the pair, if the caret touches a bracket that has a partner
     */
    static Optional<Pair> at(JavaSource java, int caret) {
        return pairWith(java, caret - 1).or(() -> pairWith(java, caret));
    }

    private static Optional<Pair> pairWith(JavaSource java, int wanted) {
        Deque<JavaToken> open = new ArrayDeque<>();
        for (JavaToken token : java.tokens()) {
            if (token.kind() == Kind.OPEN) {
                open.push(token);
            } else if (token.kind() == Kind.CLOSE
                    && !open.isEmpty()
                    && java.arePair(open.peek(), token)) {
                Pair pair = new Pair(open.pop().start(), token.start());
                if (pair.open() == wanted || pair.close() == wanted) {
                    return Optional.of(pair);
                }
            }
        }
        return Optional.empty();
    }
}
