package coldwright.bench.remote;

import coldwright.figure.Drawing;
import coldwright.figure.Figure;

import java.lang.reflect.Array;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A value as text, for display and in full.
 *
 * @param text for display: numbers with at most six significant digits, long text cut
 * @param exact for comparing: numbers in full; equal to {@code text} if it isn't a number
 * @param type simple name of its class; empty if there is no value
 */
public record ValueText(String text, String exact, String type) {
    private static final MathContext SIX_DIGITS = new MathContext(6);
    private static final int MOST_CHARACTERS = 20_000;
    private static final int MOST_ITEMS = 100;
    private static final int MOST_DEPTH = 4;

    /** Formats any value of a snippet. */
    public static ValueText of(Object value) {
        String text = cut(text(value, 0));
        boolean number = value instanceof Number || value instanceof Boolean;
        String type = value == null ? "" : value.getClass().getSimpleName();
        return new ValueText(text, number ? cut(String.valueOf(value)) : text, type);
    }

    private static String text(Object value, int depth) {
        if (value instanceof Double || value instanceof Float) {
            return number(((Number) value).doubleValue());
        }
        if (value instanceof Figure figure) {
            return "the figure “" + figure.title() + "”";
        }
        if (value instanceof Drawing drawing) {
            return "the drawing “" + drawing.title() + "”";
        }
        if (value != null && depth < MOST_DEPTH) {
            if (value.getClass().isArray()) {
                return items(
                        IntStream.range(0, Array.getLength(value))
                                .mapToObj(i -> text(Array.get(value, i), depth + 1)),
                        Array.getLength(value));
            }
            if (value instanceof Collection<?> items) {
                return items(items.stream().map(one -> text(one, depth + 1)), items.size());
            }
            if (value instanceof Map<?, ?> map) {
                return items(
                        map.entrySet().stream()
                                .map(
                                        entry ->
                                                text(entry.getKey(), depth + 1)
                                                        + ": "
                                                        + text(entry.getValue(), depth + 1)),
                        map.size());
            }
        }
        return String.valueOf(value);
    }

    private static String items(Stream<String> texts, int size) {
        String more = size > MOST_ITEMS ? ", … " + size + " in all" : "";
        return texts.limit(MOST_ITEMS).collect(Collectors.joining(", ", "[", more + "]"));
    }

    /**
     * Formats a number with at most six significant digits, such as {@code -2.03412}, {@code 120}
     * or {@code 4.2e-7}.
     */
    static String number(double value) {
        if (Double.isNaN(value)) {
            return "not a number";
        }
        if (Double.isInfinite(value)) {
            return value > 0 ? "infinite" : "minus infinite";
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(SIX_DIGITS).stripTrailingZeros();
        int magnitude = rounded.precision() - rounded.scale() - 1;
        if (magnitude >= -4 && magnitude < 6) {
            return rounded.toPlainString();
        }
        BigDecimal mantissa = rounded.movePointLeft(magnitude).stripTrailingZeros();
        return mantissa.toPlainString() + "e" + magnitude;
    }

    private static String cut(String text) {
        return text.length() > MOST_CHARACTERS ? text.substring(0, MOST_CHARACTERS) + "…" : text;
    }
}
