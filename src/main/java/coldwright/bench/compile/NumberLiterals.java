package coldwright.bench.compile;

import coldwright.bench.remote.Order;
import coldwright.source.JavaSource;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The numbers that a compiled step declares, such as the 120 in {@code double sugar = 120;}. A
 * snippet that differs from the step in such numbers only needs no compiling: the variables are set
 * instead.
 */
final class NumberLiterals {
    private static final String NUMBER_TEXT = "-?[0-9]+(?:\\.[0-9]+)?(?:[eE]-?[0-9]+)?";
    private static final Pattern NUMBER = Pattern.compile(NUMBER_TEXT);
    private static final Pattern WHOLE = Pattern.compile("-?(?:0|[1-9][0-9]*)");
    private static final String DECLARATION_TEXT =
            "(double|int|long|var)\\s+(%s)\\s*=\\s*(" + NUMBER_TEXT + ")\\s*;";
    private static final Pattern DECLARATION =
            Pattern.compile(
                    "\\s*" + DECLARATION_TEXT.formatted("[\\p{L}_$][\\p{L}\\p{N}_$]*") + "\\s*");

    private final CompiledStep step;
    private final List<LiteralRange> spots = new ArrayList<>();

    /** A number in the step's text. */
    private record LiteralRange(int statement, int start, int end, boolean inferred) {}

    NumberLiterals(CompiledStep step) {
        this.step = step;
        for (int i = 0; i < step.statements().size(); i++) {
            CompiledStatement statement = step.statements().get(i);
            Matcher matcher = DECLARATION.matcher(JavaSource.of(statement.text()).masked());
            if (statement.declared().isPresent() && matcher.matches()) {
                spots.add(
                        new LiteralRange(
                                i,
                                statement.start() + matcher.start(3),
                                statement.start() + matcher.end(3),
                                matcher.group(1).equals("var")));
            }
        }
    }

    /**
     * Reads a snippet as the step with other numbers.
     *
     * @param text the snippet
     * @return what to set, by statement; empty if more than numbers differs, or a number would
     *     change its variable's type
     */
    Optional<Map<Integer, Order.Assign>> read(String text) {
        String own = step.text();
        Map<Integer, Order.Assign> changed = new TreeMap<>();
        int ownAt = 0;
        int at = 0;
        for (LiteralRange literalRange : spots) {
            String between = own.substring(ownAt, literalRange.start());
            Matcher number = NUMBER.matcher(text);
            if (!text.startsWith(between, at) || !number.find(at + between.length())) {
                return Optional.empty();
            }
            at += between.length();
            if (number.start() != at) {
                return Optional.empty();
            }
            String now = number.group();
            if (!now.equals(own.substring(literalRange.start(), literalRange.end()))) {
                CompiledStatement.DeclaredVariable declaredVariable =
                        step.statements().get(literalRange.statement()).declared().orElseThrow();
                Optional<Double> value =
                        value(now, declaredVariable.type(), literalRange.inferred());
                if (value.isEmpty()) {
                    return Optional.empty();
                }
                changed.put(
                        literalRange.statement(),
                        new Order.Assign(
                                declaredVariable.holder(), declaredVariable.name(), value.get()));
            }
            at = number.end();
            ownAt = literalRange.end();
        }
        return text.substring(at).equals(own.substring(ownAt))
                ? Optional.of(changed)
                : Optional.empty();
    }

    /** What Java would make of a number written for a variable of a type, if it takes it. */
    private static Optional<Double> value(String written, String type, boolean inferred) {
        if (WHOLE.matcher(written).matches()) {
            boolean fits = !inferred || type.equals("int");
            return fits ? wholeValue(written) : Optional.empty();
        }
        if (!type.equals("double") || written.matches("-?0[0-9].*")) {
            return Optional.empty();
        }
        double value = Double.parseDouble(written);
        boolean vanished = value == 0 && !written.matches("[-0.]+(?:[eE].*)?");
        return Double.isInfinite(value) || vanished ? Optional.empty() : Optional.of(value);
    }

    private static Optional<Double> wholeValue(String written) {
        try {
            return Optional.of((double) Integer.parseInt(written));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
