package coldwright.batch;

import coldwright.science.Require;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number and its unit as somebody typed them.
 *
 * @param what what it is the quantity of, for messages
 * @param value the number
 * @param unit the unit in lower case; empty if none stands there
 */
record TypedQuantity(String what, double value, String unit) {
    private static final Pattern SHAPE =
            Pattern.compile("([+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+))\\s*(.*)");

    /** Most that an amount may weigh: a tonne. */
    private static final double MOST_G = 1e6;

    static TypedQuantity of(String what, String typed) {
        String text = typed.strip().replace('−', '-');
        Matcher shape = SHAPE.matcher(text);
        if (!shape.matches() || shape.group(2).startsWith(",")) {
            String mend =
                    text.matches("[+-]?[0-9]+,[0-9]+.*")
                            ? "write decimals with a point, as in " + text.replace(',', '.')
                            : "write a number";
            throw new IllegalArgumentException(
                    "%s is \"%s\", which is no number; %s"
                            .formatted(what, RecipeHeadReader.shortened(typed.strip()), mend));
        }
        return new TypedQuantity(
                what,
                Double.parseDouble(shape.group(1)),
                shape.group(2).strip().toLowerCase(Locale.ROOT));
    }

    /** As grams; a bare number is grams. */
    double grams() {
        double massG =
                switch (unit) {
                    case "", "g", "gram", "grams" -> value;
                    case "kg" -> value * 1000;
                    case "mg" -> value / 1000;
                    default ->
                            throw new IllegalArgumentException(
                                    "%s is given in \"%s\"; write it in g or kg"
                                            .formatted(what, unit));
                };
        if (massG < 0) {
            throw new IllegalArgumentException(
                    "%s is %s g; an amount must be zero or more: leave the ingredient out instead"
                            .formatted(what, Require.format(massG)));
        }
        return Require.within(what, massG, new Require.Range(0, MOST_G, "g"));
    }

    /** As a temperature, °C unless °F is written. */
    double celsius(double least, double most) {
        double temperatureC =
                switch (unit) {
                    case "", "°c", "c" -> value;
                    case "°f", "f" -> (value - 32) / 1.8;
                    default ->
                            throw new IllegalArgumentException(
                                    "%s is given in \"%s\"; write it in °C".formatted(what, unit));
                };
        return Require.within(what, temperatureC, new Require.Range(least, most, "°C"));
    }

    /** As a difference of temperatures, °C. */
    double degrees() {
        return switch (unit) {
            case "", "°c", "c" -> value;
            case "°f", "f" -> value / 1.8;
            default -> throw unknown("°C");
        };
    }

    /** As days. */
    double days() {
        return switch (unit) {
            case "", "d", "day", "days" -> value;
            case "week", "weeks" -> value * 7;
            case "h", "hour", "hours" -> value / 24;
            default -> throw unknown("days");
        };
    }

    /** As hours. */
    double hours() {
        return switch (unit) {
            case "", "h", "hour", "hours" -> value;
            case "min", "minute", "minutes" -> value / 60;
            case "d", "day", "days" -> value * 24;
            default -> throw unknown("h");
        };
    }

    private IllegalArgumentException unknown(String usual) {
        return new IllegalArgumentException(
                "%s is given in \"%s\"; write it in %s".formatted(what, unit, usual));
    }

    double percent(double least, double most) {
        if (!unit.isEmpty() && !unit.equals("%")) {
            throw new IllegalArgumentException(
                    "%s is given in \"%s\"; write it in %%".formatted(what, unit));
        }
        return Require.within(what, value, new Require.Range(least, most, "%"));
    }
}
