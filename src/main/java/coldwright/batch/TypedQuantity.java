package coldwright.batch;

import coldwright.recipe.TypedAmount;
import coldwright.science.Require;
import coldwright.words.Phrase;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
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

    private static final Map<String, Double> DEGREES =
            Map.of("", 1.0, "°c", 1.0, "c", 1.0, "°f", 1 / 1.8, "f", 1 / 1.8);

    private static final Map<String, Double> HOURS =
            Map.ofEntries(
                    Map.entry("", 1.0),
                    Map.entry("min", 1 / 60.0),
                    Map.entry("minute", 1 / 60.0),
                    Map.entry("minutes", 1 / 60.0),
                    Map.entry("h", 1.0),
                    Map.entry("hour", 1.0),
                    Map.entry("hours", 1.0),
                    Map.entry("d", 24.0),
                    Map.entry("day", 24.0),
                    Map.entry("days", 24.0),
                    Map.entry("week", 168.0),
                    Map.entry("weeks", 168.0));

    static TypedQuantity of(String what, String typed) {
        String text = typed.strip().replace('−', '-').replaceFirst("(?<=[0-9]),(?=[0-9])", ".");
        Matcher shape = SHAPE.matcher(text);
        if (!shape.matches() || shape.group(2).startsWith(",")) {
            throw Fault.in("number", named(what), RecipeHeadReader.shortened(typed.strip()));
        }
        return new TypedQuantity(
                named(what),
                Double.parseDouble(shape.group(1)),
                shape.group(2).strip().toLowerCase(Locale.ROOT));
    }

    /** A mass, g, in any unit of mass that recipes use; a bare number is grams. */
    static double grams(String what, String typed) {
        OptionalDouble massG = TypedAmount.grams(typed);
        if (massG.isPresent()) {
            Require.Range range = new Require.Range(0, RecipeLine.MOST_G, "g");
            return Require.within(named(what), massG.getAsDouble(), range);
        }
        TypedQuantity read = of(what, typed);
        throw read.value < 0
                ? Fault.in("negative", read.what, Require.format(read.value))
                : Fault.in("unit.mass", read.what, read.unit);
    }

    private static String named(String what) {
        return Phrase.named("batch", "field", what).shown();
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
        return in(
                HOURS, "days", value / (unit.isEmpty() ? 1 : 24), new Require.Range(0, most, "d"));
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
