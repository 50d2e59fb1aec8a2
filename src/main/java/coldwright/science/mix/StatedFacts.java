package coldwright.science.mix;

import coldwright.science.Require;
import coldwright.science.freezing.Solute;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a cook states of an ingredient beside its composition: {@code sweetness 70}, {@code pac
 * 120}, {@code de 60}, {@code molar mass 342}, {@code density 1.3}, {@code allergens milk and soy}.
 *
 * <p>Sweetness and PAC are those of 100 g of the ingredient on the trade's scale, sucrose = 100;
 * what its sugars don't explain is added. DE is that of its higher saccharides, and the molar mass,
 * in g/mol, that of its other carbohydrate, which then counts as dissolved.
 *
 * @param parts the other parts, which are shares of its mass
 */
record StatedFacts(
        List<String> parts,
        double sweetness,
        double pac,
        double de,
        double gPerMol,
        OptionalDouble densityKgPerL,
        Set<Allergen> allergens) {
    private static final Pattern NUMBER =
            Pattern.compile(
                    "(sweetness|pod|pac|freezing power|de|molar mass|density) *:? *([0-9.]+) *(?:g/mol|kg/l|%)?");
    private static final Pattern ALLERGENS = Pattern.compile("allergens? *:? *(.+)");
    private static final double GLUCOSE_MMOL_PER_G = 1000 / Solute.GLUCOSE.molarMassGPerMol();

    static StatedFacts in(String name, List<String> all) {
        List<String> parts = new ArrayList<>();
        double[] numbers = {Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN};
        Set<Allergen> allergens = EnumSet.noneOf(Allergen.class);
        for (String part : all) {
            String text = part.strip().toLowerCase(Locale.ROOT);
            Matcher number = NUMBER.matcher(text);
            Matcher named = ALLERGENS.matcher(text);
            if (number.matches()) {
                int at =
                        switch (number.group(1)) {
                            case "sweetness", "pod" -> 0;
                            case "pac", "freezing power" -> 1;
                            case "de" -> 2;
                            case "molar mass" -> 3;
                            default -> 4;
                        };
                numbers[at] =
                        OwnIngredient.number(
                                name, number.group(1), number.group(2), RANGES.get(at));
            } else if (named.matches()) {
                for (String word : named.group(1).split(" and | & | ")) {
                    allergens.add(allergen(name, word));
                }
            } else {
                parts.add(part);
            }
        }
        return new StatedFacts(
                parts,
                numbers[0],
                numbers[1],
                numbers[2],
                numbers[3],
                Double.isNaN(numbers[4]) ? OptionalDouble.empty() : OptionalDouble.of(numbers[4]),
                allergens);
    }

    private static final List<Require.Range> RANGES =
            List.of(
                    new Require.Range(0, 100_000, "on the scale of sucrose = 100"),
                    new Require.Range(0, 1500, "on the scale of sucrose = 100"),
                    new Require.Range(1, 100, ""),
                    new Require.Range(18, 100_000, "g/mol"),
                    new Require.Range(0.1, 3, "kg/L"));

    private static Allergen allergen(String name, String word) {
        String plain = word.strip().toUpperCase(Locale.ROOT).replaceAll("[ -]", "_");
        for (Allergen one : Allergen.values()) {
            if (one.name().equals(plain)
                    || one.name().equals(plain + "S")
                    || one == Allergen.TREE_NUTS && plain.matches("NUTS?")
                    || one == Allergen.SOY && plain.equals("SOYA")
                    || one == Allergen.GLUTEN_CEREALS && plain.equals("GLUTEN")) {
                return one;
            }
        }
        throw OwnIngredient.fault("allergen", word.strip(), name);
    }

    /** The composition with what was stated of it. */
    Composition added(Composition to) {
        Composition c = to;
        if (de > 0) {
            double mmol = c.percent(Component.HIGHER_SACCHARIDES) * de / 100 * GLUCOSE_MMOL_PER_G;
            c = c.with(mmol, Tally.HIGHER_SACCHARIDES_MMOL);
        }
        if (gPerMol > 0) {
            double mmol = 1000 * c.percent(Component.OTHER_CARBOHYDRATE) / gPerMol;
            c = c.with(c.per100g(Tally.IONS_MMOL) + mmol, Tally.IONS_MMOL);
        }
        if (sweetness > 0) {
            c = c.with(Math.max(0, sweetness - Sweetener.podOf100g(c)), Tally.STATED_SWEETNESS);
        }
        if (pac > 0) {
            double more = Math.max(0, pac - AntiFreezingPower.pacOf100g(c));
            double mmol = 1000 * more / Solute.SUCROSE.molarMassGPerMol();
            c = c.with(c.per100g(Tally.IONS_MMOL) + mmol, Tally.IONS_MMOL);
        }
        return c;
    }
}
