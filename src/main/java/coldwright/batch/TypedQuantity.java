package coldwright.batch;

import coldwright.science.Require;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number and its unit, as typed.
 *
 * @param what name of the quantity, for messages
 * @param value the number
 * @param unit the unit in lower case; empty if there is none
 */
record TypedQuantity(String what, double value, String unit) {
    private static final Pattern SHAPE =
            Pattern.compile("([+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+))\\s*(.*)");

    /** Grams of each unit of mass. */
    private static final Map<String, Double> GRAMS =
            Map.of("", 1.0, "g", 1.0, "gram", 1.0, "grams", 1.0, "kg", 1000.0, "mg", 0.001);

    private static final Map<String, Double> DEGREES =
            Map.of("", 1.0, "°c", 1.0, "c", 1.0, "°f", 1 / 1.8, "f", 1 / 1.8);

    private static final Map<String, Double> DAYS =
            Map.of(
                    "", 1.0, "d", 1.0, "day", 1.0, "days", 1.0, "week", 7.0, "weeks", 7.0, "h",
                    1 / 24.0, "hour", 1 / 24.0, "hours", 1 / 24.0);

    private static final Map<String, Double> HOURS =
            Map.of(
                    "", 1.0, "h", 1.0, "hour", 1.0, "hours", 1.0, "min", 1 / 60.0, "minute",
                    1 / 60.0, "minutes", 1 / 60.0, "d", 24.0, "day", 24.0, "days", 24.0);

    static TypedQuantity of(String what, String typed) {
        String text = typed.strip().replace('−', '-');
        Matcher shape = SHAPE.matcher(text);
        if (!shape.matches() || shape.group(2).startsWith(",")) {
            boolean comma = text.matches("[+-]?[0-9]+,[0-9]+.*");
            throw Fault.in(
                    comma ? "number.comma" : "number",
                    what,
                    RecipeHeadReader.shortened(typed.strip()),
                    text.replace(',', '.'));
        }
        return new TypedQuantity(
                what,
                Double.parseDouble(shape.group(1)),
                shape.group(2).strip().toLowerCase(Locale.ROOT));
    }

    /** Converts to grams; a bare number is grams. */
    double grams() {
        if (value < 0 && GRAMS.containsKey(unit)) {
            throw Fault.in("negative", what, Require.format(value * GRAMS.get(unit)));
        }
        return in(GRAMS, "g or kg", value, new Require.Range(0, RecipeLine.MOST_G, "g"));
    }

    /** Converts to a temperature, °C unless °F is written. */
    double celsius(double least, double most) {
        double zero = unit.endsWith("f") ? 32 : 0;
        return in(DEGREES, "°C", value - zero, new Require.Range(least, most, "°C"));
    }

    /** Converts to a temperature difference, °C. */
    double degrees(double most) {
        return in(DEGREES, "°C", value, new Require.Range(0, most, "°C"));
    }

    /** Converts to days. */
    double days(double most) {
        return in(DAYS, "days", value, new Require.Range(0, most, "d"));
    }

    /** Converts to hours. */
    double hours(double most) {
        return in(HOURS, "h", value, new Require.Range(0, most, "h"));
    }

    /** Converts to a share, %. */
    double percent(double most) {
        return in(Map.of("", 1.0, "%", 1.0), "%", value, new Require.Range(0, most, "%"));
    }

    private double in(Map<String, Double> units, String usual, double number, Require.Range range) {
        if (!units.containsKey(unit)) {
            throw Fault.in("unit", what, unit, usual);
        }
        return Require.within(what, number * units.get(unit), range);
    }
}
