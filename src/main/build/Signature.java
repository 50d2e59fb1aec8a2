import com.sun.source.tree.ClassTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import javax.lang.model.element.Modifier;

/** Formats a declaration for readers who do not know Java's types. */
final class Signature {
    private Signature() {}

    /** Parameters in brackets. */
    static String parameters(List<? extends VariableTree> parameters) {
        return parameters.stream()
                .map(
                        one -> {
                            String name = one.getName().toString();
                            String type = plain(one.getType());
                            String unit = Units.of(name, type);
                            if (!unit.isEmpty()) {
                                return name + " in " + unit;
                            }
                            boolean told = type.equals("double") || type.equalsIgnoreCase(name);
                            return told ? name : spoken(type) + " " + name;
                        })
                .collect(Collectors.joining(", ", "(", ")"));
    }

    private static String spoken(String type) {
        return type.replace("double[]", "numbers")
                .replace("[]", "…")
                .replaceAll("\\bdouble\\b", "number")
                .replaceAll("\\bint\\b", "whole number")
                .replaceAll("DoubleUnaryOperator|DoubleFunction<.*>", "function");
    }

    /** Return type after an arrow; empty if there is none. */
    static String arrow(String name, Tree type) {
        String unit = Units.of(name, plain(type));
        if (plain(type).equals("void")) {
            return "";
        }
        return " → " + (unit.isEmpty() ? spoken(plain(type)) : unit);
    }

    /** A type without its packages and annotations. */
    static String plain(Tree type) {
        return type.toString()
                .replaceAll("\\b(?:[a-z]\\w*\\.)+(?=[A-Z])", "")
                .replaceAll("\\s+", " ")
                .replaceAll("@\\w+ ?", "");
    }

    /** The components of a record; empty for another type. */
    static List<VariableTree> components(ClassTree type) {
        if (type.getKind() != Tree.Kind.RECORD) {
            return List.of();
        }
        return fields(type)
                .filter(one -> !one.getModifiers().getFlags().contains(Modifier.STATIC))
                .toList();
    }

    /** The constants of an enum. */
    static List<String> choices(ClassTree type) {
        return fields(type)
                .filter(Signature::isChoice)
                .map(one -> one.getName().toString())
                .toList();
    }

    private static Stream<VariableTree> fields(ClassTree type) {
        return type.getMembers().stream()
                .filter(VariableTree.class::isInstance)
                .map(VariableTree.class::cast);
    }

    /**
     * Whether it is an enum constant, which the parser writes as a marked field made with {@code
     * new}.
     */
    static boolean isChoice(VariableTree field) {
        return field.toString().strip().startsWith("/*public static final*/");
    }
}
