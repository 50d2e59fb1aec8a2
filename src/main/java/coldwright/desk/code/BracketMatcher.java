package coldwright.desk.code;

import coldwright.lesson.code.JavaToken;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** Finds the bracket that belongs to the one beside the caret. */
final class BracketMatcher {
    private static final String OPEN = "([{";
    private static final String CLOSE = ")]}";

    /**
     * Two brackets that belong together.
     *
     * @param open where the first stands
     * @param close where the second stands
     */
    record Pair(int open, int close) {}

    private BracketMatcher() {}

    /**
     * The pair that the caret touches; of two, the one before the caret.
     *
     * @param java the text
     * @param words its words, of which strings and remarks are passed over
     * @param caret where the caret stands
     * @return the pair, if the caret touches a bracket that has a partner
     */
    static Optional<Pair> at(String java, List<JavaToken> words, int caret) {
        Optional<Pair> before = pairWith(java, words, caret - 1);
        return before.isPresent() ? before : pairWith(java, words, caret);
    }

    private static Optional<Pair> pairWith(String java, List<JavaToken> words, int wanted) {
        if (wanted < 0 || wanted >= java.length() || !isBracket(java.charAt(wanted))) {
            return Optional.empty();
        }
        Deque<Integer> open = new ArrayDeque<>();
        int word = 0;
        for (int at = 0; at < java.length(); at++) {
            while (word < words.size() && words.get(word).end() <= at) {
                word++;
            }
            if (word < words.size() && words.get(word).start() <= at && isQuoted(words.get(word))) {
                continue;
            }
            char here = java.charAt(at);
            if (OPEN.indexOf(here) >= 0) {
                open.push(at);
            } else if (CLOSE.indexOf(here) >= 0 && !open.isEmpty()) {
                int begun = open.peek();
                if (OPEN.indexOf(java.charAt(begun)) == CLOSE.indexOf(here)) {
                    open.pop();
                    if (begun == wanted || at == wanted) {
                        return Optional.of(new Pair(begun, at));
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isBracket(char sign) {
        return OPEN.indexOf(sign) >= 0 || CLOSE.indexOf(sign) >= 0;
    }

    private static boolean isQuoted(JavaToken word) {
        return switch (word.kind()) {
            case STRING, COMMENT, DIAL -> true;
            default -> false;
        };
    }
}
