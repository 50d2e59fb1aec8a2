package coldwright.source;

import coldwright.source.JavaToken.Kind;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The names in a snippet, for finding which snippets depend on each other. Read from the text
 * alone, so that it also works while a snippet doesn't compile.
 *
 * @param declared names that the snippet declares for those below it
 * @param mentioned every name in it that doesn't follow a dot
 * @param assigned names that it assigns to
 * @param firm declared names with immutable values, which snippets below can change only by
 *     assignment: numbers, strings and the calculator's objects
 */
public record JavaNames(
        Set<String> declared, Set<String> mentioned, Set<String> assigned, Set<String> firm) {
    private static final Set<String> PLAIN_TYPES =
            Set.of(
                    "double", "int", "long", "float", "short", "byte", "boolean", "char", "String",
                    "Double", "Integer", "Long", "Boolean");
    private static final Set<String> KEYWORDS =
            Set.of(
                    ("return throw new else case assert instanceof import package goto"
                                    + " break continue yield do extends implements throws")
                            .split(" "));
    private static final Set<String> COMPARISONS = Set.of("==", "!=", "<=", ">=");
    private static final Set<String> TYPE_WORDS = Set.of("class", "record", "interface", "enum");

    /** Java types whose methods return mutable objects. */
    private static final Set<String> LOOSE_MAKERS =
            Set.of("Arrays", "Collections", "Stream", "IntStream", "DoubleStream", "Optional");

    /** Makes defensive copies. */
    public JavaNames {
        declared = Set.copyOf(declared);
        mentioned = Set.copyOf(mentioned);
        assigned = Set.copyOf(assigned);
        firm = Set.copyOf(firm);
    }

    /**
     * Reads the names.
     *
     * @param code a snippet, perhaps unfinished
     */
    public static JavaNames of(String code) {
        return new NameCollector(JavaSource.of(code)).names();
    }

    private static final class NameCollector {
        private final JavaSource source;
        private final List<JavaToken> tokens;
        private final Set<String> declared = new HashSet<>();
        private final Set<String> mentioned = new HashSet<>();
        private final Set<String> assigned = new HashSet<>();
        private final Set<String> firm = new HashSet<>();

        NameCollector(JavaSource source) {
            this.source = source;
            this.tokens = source.code();
        }

        JavaNames names() {
            int depth = 0;
            for (int i = 0; i < tokens.size(); i++) {
                switch (tokens.get(i).kind()) {
                    case OPEN -> depth++;
                    case CLOSE -> depth--;
                    case WORD -> name(i, depth);
                    default -> {}
                }
            }
            return new JavaNames(declared, mentioned, assigned, firm);
        }

        private void name(int at, int depth) {
            String name = text(at);
            if (text(at - 1).equals(".")) {
                return;
            }
            mentioned.add(name);
            if (isAssignment(at + 1) || isStep(text(at + 1)) || isStep(text(at - 1))) {
                assigned.add(name);
            }
            if (depth == 0 && declares(at)) {
                declared.add(name);
                if (isFirm(at)) {
                    firm.add(name);
                }
            }
        }

        /**
         * Whether a declaration begins here: two names in a row, or a type's closing bracket and a
         * name.
         */
        private boolean declares(int at) {
            String before = text(at - 1);
            if (TYPE_WORDS.contains(before)) {
                return true;
            }
            boolean afterType =
                    isName(at - 1) && !KEYWORDS.contains(before)
                            || before.equals("]")
                            || before.equals(">");
            boolean further = before.equals(",") && isAssignment(at + 1);
            String after = text(at + 1);
            return further
                    || afterType
                            && (after.equals("=")
                                    || after.equals(";")
                                    || after.equals(",")
                                    || after.equals("(")
                                    || after.equals("[")
                                    || after.isEmpty());
        }

        private boolean isFirm(int at) {
            if (PLAIN_TYPES.contains(text(at - 1))) {
                return !text(at + 1).equals("(");
            }
            String maker = text(at + 2);
            boolean number = isKind(at + 2, Kind.NUMBER);
            boolean made =
                    isName(at + 2)
                            && Character.isUpperCase(maker.charAt(0))
                            && !LOOSE_MAKERS.contains(maker)
                            && text(at + 3).equals(".")
                            && isName(at + 4);
            return text(at + 1).equals("=") && (number || made);
        }

        private boolean isName(int at) {
            return isKind(at, Kind.WORD);
        }

        private boolean isKind(int at, Kind kind) {
            return at >= 0 && at < tokens.size() && tokens.get(at).kind() == kind;
        }

        private boolean isAssignment(int at) {
            return isKind(at, Kind.OPERATOR)
                    && text(at).endsWith("=")
                    && !COMPARISONS.contains(text(at));
        }

        private static boolean isStep(String token) {
            return token.equals("++") || token.equals("--");
        }

        private String text(int at) {
            return at >= 0 && at < tokens.size() ? source.text(tokens.get(at)) : "";
        }
    }
}
