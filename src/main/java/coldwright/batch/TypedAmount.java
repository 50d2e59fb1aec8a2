package coldwright.batch;

import coldwright.science.Require;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.KitchenMeasure;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An amount as a cook types it: {@code 120}, {@code 1.2 kg}, {@code 2 tbsp}, {@code 1/2 cup}.
 *
 * @param count number of units
 * @param unit the unit as typed, lower case; empty for grams
 */
public record TypedAmount(double count, String unit) {
    private static final Pattern SHAPE =
            Pattern.compile("([0-9]*\\.?[0-9]*)\\s*(?:([0-9]+)\\s*/\\s*([0-9]+))?\\s*([a-z ]*)");

    private static final double MOST_G = 1e6;

    /**
     * Parses an amount.
     *
     * @throws IllegalArgumentException if the text is not an amount
     */
    public static TypedAmount of(String text) {
        String plain =
                text.strip()
                        .toLowerCase(Locale.ROOT)
                        .replace("½", " 1/2")
                        .replace("¼", " 1/4")
                        .replace("¾", " 3/4")
                        .replace("⅓", " 1/3")
                        .replace("⅔", " 2/3")
                        .strip();
        Matcher comma = Pattern.compile("[0-9]+,[0-9]+.*").matcher(plain);
        if (comma.matches()) {
            throw Fault.in("comma", text.strip(), plain.replace(',', '.'));
        }
        Matcher shape = SHAPE.matcher(plain.matches("[0-9]+/.*") ? "0 " + plain : plain);
        if (!shape.matches() || !plain.matches(".*[0-9].*") || shape.group(1).equals(".")) {
            throw Fault.in("amount", text.strip());
        }
        double whole = shape.group(1).isEmpty() ? 0 : Double.parseDouble(shape.group(1));
        double part = 0;
        if (shape.group(2) != null) {
            double below = Double.parseDouble(shape.group(3));
            if (below == 0) {
                throw Fault.in("by-zero");
            }
            part = Double.parseDouble(shape.group(2)) / below;
        }
        return new TypedAmount(whole + part, shape.group(4).strip());
    }

    /**
     * The mass in grams.
     *
     * @param ingredient the ingredient; spoons and cups need its density
     * @return g, 0 to a tonne
     * @throws IllegalArgumentException if the unit is unknown, or the ingredient must be weighed
     */
    public double grams(Ingredient ingredient) {
        double massG =
                weighed()
                        ? count * TypedQuantity.GRAMS.get(unit)
                        : measure().of(count, ingredient).massG();
        return Require.within(ingredient.name(), massG, new Require.Range(0, MOST_G, "g"));
    }

    /** Whether it is weighed, not measured by volume. */
    boolean weighed() {
        return TypedQuantity.GRAMS.containsKey(unit);
    }

    private KitchenMeasure measure() {
        return switch (unit) {
            case "tsp", "teaspoon", "teaspoons" -> KitchenMeasure.TEASPOONS;
            case "tbsp", "tablespoon", "tablespoons" -> KitchenMeasure.TABLESPOONS;
            case "cup", "cups" -> KitchenMeasure.CUPS;
            case "fl oz" -> KitchenMeasure.FLUID_OUNCES;
            case "ml" -> KitchenMeasure.MILLILITRES;
            case "l" -> KitchenMeasure.LITRES;
            default -> throw Fault.in("amount.unit", unit);
        };
    }

    /** The amount multiplied, as a cook would type it. */
    String times(double factor) {
        return (number(count * factor) + " " + unit).strip();
    }

    /**
     * A finite number as a cook writes it: three decimals below 10, two below 100, else one,
     * without trailing zeros.
     */
    public static String number(double value) {
        double size = Math.abs(value);
        double step = size >= 100 ? 0.1 : size >= 10 ? 0.01 : 0.001;
        double rounded = Math.round(value / step) * step;
        return new java.math.BigDecimal(rounded)
                .setScale(3, java.math.RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
