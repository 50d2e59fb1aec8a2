package coldwright.play;

import coldwright.source.JavaSource;
import coldwright.source.JavaToken;
import coldwright.source.JavaToken.Kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * What a condition such as {@code sweetness >= 13 && sweetness <= 16} compares: {@code sweetness}.
 * Its values show by how much the condition fails.
 */
final class ComparedValues {
    private static final Set<String> COMPARE = Set.of("<", ">", "<=", ">=", "==", "!=");

    /** A condition with one of these at its top isn't a list of comparisons. */
    private static final Set<String> OTHER = Set.of("||", "?", "->", "!");

    private ComparedValues() {}

    /** The sides of its comparisons that aren't plain numbers, each once; none if it has others. */
    static List<String> of(String condition) {
        JavaSource source = JavaSource.of(condition);
        List<String> values = new ArrayList<>();
        int depth = 0;
        int from = 0;
        boolean compares = false;
        for (JavaToken token : source.code()) {
            String text = source.text(token);
            depth += token.kind() == Kind.OPEN ? 1 : token.kind() == Kind.CLOSE ? -1 : 0;
            boolean outside = depth == 0 && token.kind() == Kind.OPERATOR;
            boolean comparison = outside && COMPARE.contains(text);
            if (outside && OTHER.contains(text) || comparison && compares) {
                return List.of();
            }
            if (comparison || outside && text.equals("&&")) {
                if (comparison || compares) {
                    add(condition.substring(from, token.start()).strip(), values);
                }
                from = token.end();
                compares = comparison;
            }
        }
        if (compares) {
            add(condition.substring(from).strip(), values);
        }
        return values;
    }

    private static void add(String side, List<String> values) {
        if (JavaSource.of(side).namesSomething() && !values.contains(side)) {
            values.add(side);
        }
    }
}
