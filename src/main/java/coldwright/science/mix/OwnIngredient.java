package coldwright.science.mix;

import coldwright.science.Require;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A learner's own ingredient, written in the trade's words: {@code water 40, sucrose 60} or {@code
 * fat 32 %, milk solids not fat 6.1 %}.
 *
 * <p>You can name every component ({@link Component#words}), and: {@code fat} (milk fat if milk
 * solids not fat are named too, else other fat), {@code milk solids not fat}, {@code whey solids},
 * {@code yolk solids}, {@code other sugars} (taken as glucose), {@code protein}, {@code abv}
 * (alcohol by volume), {@code total solids} (unnamed ones count as undissolved). Without {@code
 * water} and {@code total solids} the rest is water; with water, the rest is undissolved solids.
 *
 * <p>A printed label may be typed line by line: {@code carbohydrate} holds its {@code sugars},
 * which are taken as sucrose; energy and saturates are passed over. What else may be stated is in
 * {@link StatedFacts}.
 */
public final class OwnIngredient {
    private static final Pattern NAME_FIRST =
            Pattern.compile("([a-z][a-z -]*?) +([0-9.]+) *(?:%|g)?");
    private static final Pattern NUMBER_FIRST =
            Pattern.compile("([0-9.]+) *(?:%|g)? +([a-z][a-z -]*)");

    /** Between the parts; a comma between digits is a decimal comma. */
    private static final Pattern PARTS = Pattern.compile("[;\\n]|,(?!\\d)|(?<!\\d),");

    private static final Pattern PASSED_OVER =
            Pattern.compile(
                    "(?:(?:energy|kcal|kj|saturates|saturated|saturated fat|gesättigte).*|[0-9.]+ *(?:kcal|kj).*)");
    private static final String SUGARS = "sugars";
    private static final String CARBOHYDRATE = "carbohydrate";
    private static final String MSNF = Tally.MILK_SOLIDS_NOT_FAT.words();
    private static final Map<String, BiFunction<Composition, Double, Composition>> TERMS =
            new LinkedHashMap<>();

    static {
        for (Component component : Component.values()) {
            TERMS.put(component.words(), (c, p) -> MilkSolids.add(c, p, component));
        }
        TERMS.put("fat", (c, p) -> MilkSolids.add(c, p, Component.OTHER_FAT));
        TERMS.put("protein", (c, p) -> MilkSolids.add(c, p, Component.OTHER_PROTEIN));
        TERMS.put(MSNF, MilkSolids::addMilk);
        TERMS.put("whey solids", MilkSolids::addWhey);
        TERMS.put("yolk solids", OwnIngredient::addYolk);
        TERMS.put("other sugars", (c, p) -> MilkSolids.add(c, p, Component.GLUCOSE));
        TERMS.put(
                "abv",
                (c, p) -> MilkSolids.add(c, AlcoholByVolume.massPercent(p), Component.ALCOHOL));
        TERMS.put(SUGARS, (c, p) -> MilkSolids.add(c, p, Component.SUCROSE));
        TERMS.put(CARBOHYDRATE, (c, p) -> c);
        TERMS.put("total solids", (c, p) -> c);
    }

    private static final Map<String, String> OTHER_WORDS =
            Map.of(
                    "msnf",
                    MSNF,
                    "snf",
                    MSNF,
                    MSNF.replace("milk ", ""),
                    MSNF,
                    "sugar",
                    "sucrose",
                    "dextrose",
                    "glucose",
                    "ethanol",
                    "alcohol",
                    "fiber",
                    "fibre",
                    "stabilizer",
                    "stabiliser",
                    "sodium chloride",
                    "salt");

    private OwnIngredient() {}

    /**
     * An ingredient by its parts.
     *
     * @param name everyday name
     * @param parts shares in % by mass, separated by commas or semicolons, with decimal points
     * @return the ingredient; its {@code inferred} lists the assumptions
     * @throws IllegalArgumentException if a part is unknown or not a number, or if the parts add up
     *     to more than 100 %
     */
    public static Ingredient of(String name, String parts) {
        StatedFacts facts = StatedFacts.in(name, List.of(PARTS.split(parts, -1)));
        Map<String, Double> stated = stated(name, facts.parts());
        List<Phrase> assumed = new ArrayList<>();
        Composition composition = Composition.NOTHING;
        double sum = 0;
        for (Map.Entry<String, Double> part : stated.entrySet()) {
            sum += massPercent(part);
            if (sum > 100 + Composition.ROUNDING_PERCENT) {
                throw new IllegalArgumentException(
                        "own ingredient \"%s\" adds up to %s %%; it may be at most 100 %%"
                                .formatted(
                                        name,
                                        Require.format(
                                                stated.entrySet().stream()
                                                        .mapToDouble(OwnIngredient::massPercent)
                                                        .sum())));
            }
            composition = add(composition, part, stated);
        }
        if (stated.containsKey("fat")) {
            boolean milk = stated.containsKey(MSNF);
            assumed.add(assumption(milk ? "milk-fat" : "other-fat"));
        }
        if (stated.containsKey(SUGARS)) {
            assumed.add(assumption("sugars", Component.SUCROSE.words()));
        }
        if (stated.containsKey("other sugars")) {
            assumed.add(assumption("other-sugars"));
        }
        composition = facts.added(withRest(name, composition, new Rest(stated, sum, assumed)));
        Set<Allergen> allergens = EnumSet.noneOf(Allergen.class);
        allergens.addAll(allergens(composition));
        allergens.addAll(facts.allergens());
        return new Ingredient(
                name,
                List.of(),
                composition,
                facts.densityKgPerL(),
                allergens,
                "own",
                String.join("; ", Phrase.english(assumed)));
    }

    private record Rest(Map<String, Double> stated, double sumPercent, List<Phrase> assumed) {}

    private static Composition withRest(String name, Composition composition, Rest rest) {
        Double totalSolids = rest.stated().get("total solids");
        double left = 100 - rest.sumPercent();
        if (totalSolids != null) {
            double alcohol = composition.percent(Component.ALCOHOL);
            double water = 100 - (totalSolids + alcohol);
            Double statedWater = rest.stated().get("water");
            double solids = rest.sumPercent() - alcohol - (statedWater == null ? 0 : statedWater);
            boolean tooMany = solids > totalSolids + Composition.ROUNDING_PERCENT;
            boolean tooWet =
                    statedWater != null
                            && Math.abs(statedWater - water) > Composition.ROUNDING_PERCENT;
            Require.that(
                    !tooMany && !tooWet && water >= 0,
                    "own ingredient \"%s\" states %s %% total solids, but its parts have %s %% solids and %s %% water. Make them agree or leave the total out.",
                    name,
                    totalSolids,
                    solids,
                    statedWater == null ? Math.max(0, water) : statedWater);
            composition = composition.with(Math.min(water, 100), Component.WATER);
            left = totalSolids - solids;
        } else if (!rest.stated().containsKey("water")) {
            if (left > 0) {
                rest.assumed().add(assumption("rest-is-water"));
            }
            return MilkSolids.add(composition, Math.max(0, left), Component.WATER);
        }
        if (left > Composition.ROUNDING_PERCENT) {
            rest.assumed().add(assumption("unnamed", left));
            return MilkSolids.add(composition, left, Component.OTHER_CARBOHYDRATE);
        }
        return composition;
    }

    private static Composition add(
            Composition to, Map.Entry<String, Double> part, Map<String, Double> stated) {
        boolean milkFat = part.getKey().equals("fat") && stated.containsKey(MSNF);
        String term = milkFat ? "milk fat" : part.getKey();
        return TERMS.get(term).apply(to, part.getValue());
    }

    private static double massPercent(Map.Entry<String, Double> part) {
        return switch (part.getKey()) {
            case "total solids" -> 0;
            case "abv" -> AlcoholByVolume.massPercent(Math.min(100, part.getValue()));
            default -> part.getValue();
        };
    }

    private static Map<String, Double> stated(String name, List<String> parts) {
        Map<String, Double> stated = new LinkedHashMap<>();
        for (String part : parts) {
            String text = part.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
            text =
                    text.replaceFirst("^(?:of which|davon) ", "")
                            .replaceAll("(?<=\\d),(?=\\d)", ".");
            if (PASSED_OVER.matcher(text).matches()) {
                continue;
            }
            Matcher nameFirst = NAME_FIRST.matcher(text);
            Matcher numberFirst = NUMBER_FIRST.matcher(text);
            String term;
            String number;
            if (nameFirst.matches()) {
                term = nameFirst.group(1);
                number = nameFirst.group(2);
            } else if (numberFirst.matches()) {
                term = numberFirst.group(2);
                number = numberFirst.group(1);
            } else {
                throw new IllegalArgumentException(
                        "\"%s\" of own ingredient \"%s\" isn't a name and a percentage. Write it like \"sucrose 60\", with a decimal point."
                                .formatted(part.strip(), name));
            }
            term = OTHER_WORDS.getOrDefault(term.strip(), term.strip());
            Require.that(
                    TERMS.containsKey(term),
                    "own ingredient \"%s\" has \"%s\", which isn't a component; use %s",
                    name,
                    term,
                    String.join(", ", TERMS.keySet()));
            Require.that(
                    stated.put(term, number(name, term, number)) == null,
                    "own ingredient \"%s\" names %s twice; add the two up",
                    name,
                    term);
        }
        Double carbohydrate = stated.remove(CARBOHYDRATE);
        if (carbohydrate != null) {
            double left = carbohydrate - stated.getOrDefault(SUGARS, 0.0);
            Require.that(
                    left >= -Composition.ROUNDING_PERCENT,
                    "own ingredient \"%s\" has more sugars than carbohydrate. State the carbohydrate with its sugars.",
                    name);
            stated.merge(Component.OTHER_CARBOHYDRATE.words(), Math.max(0, left), Double::sum);
        }
        return stated;
    }

    private static double number(String name, String term, String number) {
        try {
            return Require.within(
                    "%s of own ingredient \"%s\"".formatted(term, name),
                    Double.parseDouble(number),
                    new Require.Range(0, 100, "%"));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    "%s of own ingredient \"%s\" is \"%s\", which isn't a number"
                            .formatted(term, name, number),
                    e);
        }
    }

    /**
     * Splits yolk solids as in USDA SR24 01125: 26.54 fat, 15.86 protein, 3.59 and 1.71 of 47.69.
     */
    private static Composition addYolk(Composition to, double percent) {
        double unit = percent / 47.70;
        Composition with = MilkSolids.add(to, 26.54 * unit, Component.OTHER_FAT);
        with = MilkSolids.add(with, 15.86 * unit, Component.OTHER_PROTEIN);
        with = MilkSolids.add(with, 3.59 * unit, Component.OTHER_CARBOHYDRATE);
        with = MilkSolids.add(with, 1.71 * unit, Component.ASH);
        return with.with(percent, Tally.YOLK_SOLIDS);
    }

    private static Set<Allergen> allergens(Composition c) {
        boolean milk =
                c.percent(Component.MILK_FAT)
                                + c.percent(Component.MILK_PROTEIN)
                                + c.percent(Component.LACTOSE)
                        > 0;
        boolean egg = c.per100g(Tally.YOLK_SOLIDS) > 0;
        if (milk && egg) {
            return Set.of(Allergen.MILK, Allergen.EGG);
        }
        return milk ? Set.of(Allergen.MILK) : egg ? Set.of(Allergen.EGG) : Set.of();
    }

    private static Phrase assumption(String key, Object... values) {
        return Phrase.of("science.mix", "assumed." + key, values);
    }
}
