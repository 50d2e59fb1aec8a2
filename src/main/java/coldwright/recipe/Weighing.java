package coldwright.recipe;

import coldwright.recipe.CookingUnit.Kind;
import coldwright.science.mix.Component;
import coldwright.science.mix.HouseholdMeasure;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.IngredientKind;
import coldwright.science.mix.MixDensity;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The masses that a quantity of an ingredient may have.
 *
 * @param options none if nobody knows, several if the quantity may mean several things
 * @param why what is to be decided, or why there is no mass
 */
record Weighing(List<Weight> options, Optional<Phrase> why) {
    /** More than this is not meant where a number can be read in two ways, g. */
    private static final double HOUSEHOLD_G = 20_000;

    private static final double MOST_G = 1e7;
    private static final double CUP_ML = 236.588;
    private static final double CAN_ML = 400;
    private static final double FLUID_OUNCE_ML = 29.574;

    /** More pieces than this are rather grams; fewer grams than this are rather pieces. */
    private static final double MANY = 60;

    private static final double FEW = 20;

    /** What nobody counts: a number alone is grams. */
    private static final Set<IngredientKind> UNCOUNTED =
            EnumSet.complementOf(
                    EnumSet.of(
                            IngredientKind.FLAVOUR,
                            IngredientKind.FRUIT,
                            IngredientKind.NUT,
                            IngredientKind.PIECES,
                            IngredientKind.EGG));

    private static final String PRACTICE = "common practice, no source";

    /** A mass, how it came about and the source of the measure. */
    record Weight(double massG, Phrase how, String source) {
        LineReading.Part of(Ingredient ingredient) {
            return new LineReading.Part(ingredient, massG, how, source);
        }
    }

    /** What an ingredient of these weights adds to a mix, reading by reading. */
    List<List<LineReading.Part>> parts(Ingredient ingredient) {
        return options.stream().map(weight -> List.of(weight.of(ingredient))).toList();
    }

    /** The weights of a quantity in a line, whose other words choose the cup. */
    static Weighing of(Quantity quantity, Ingredient ingredient, String line) {
        List<Weight> all = new ArrayList<>();
        Optional<Phrase> why = Optional.empty();
        for (double count : quantity.counts()) {
            Weighing one = one(quantity.with(count), ingredient, line);
            all.addAll(one.options);
            why = one.why;
        }
        if (quantity.counts().size() > 1) {
            List<Weight> likely = all.stream().filter(w -> w.massG() <= HOUSEHOLD_G).toList();
            all = likely.isEmpty() ? all : new ArrayList<>(likely);
            why = Optional.of(phrase("why.number", quantity.text()));
        }
        if (quantity.heaped() && all.size() == 1) {
            Weight level = all.get(0);
            all.add(times(level, 2));
            why = Optional.of(phrase("why.heaped"));
        }
        if (all.stream().anyMatch(w -> w.massG() > MOST_G)) {
            return nothing(phrase("unknown.large", quantity.text()));
        }
        return new Weighing(List.copyOf(all), all.size() == 1 ? Optional.empty() : why);
    }

    /** The weights of a number without a unit in a table of grams. */
    static Weighing bare(Quantity quantity, Ingredient ingredient) {
        Weighing grams = of(quantity.in(CookingUnit.GRAM), ingredient, "");
        if (quantity.count() > FEW || ingredient.measure("piece").isEmpty()) {
            return grams;
        }
        List<Weight> both =
                new ArrayList<>(of(quantity.in(CookingUnit.PIECE), ingredient, "").options);
        both.addAll(grams.options);
        return new Weighing(both, Optional.of(phrase("why.bare")));
    }

    private static Weighing one(Quantity quantity, Ingredient ingredient, String line) {
        if (quantity.unit().isEmpty()) {
            return pieces(quantity, ingredient, line);
        }
        CookingUnit unit = quantity.unit().get();
        if (unit.is(Kind.MASS)) {
            Weight byMass = mass(quantity, unit);
            return unit.name().equals("oz") && isLiquid(ingredient)
                    ? both(
                            phrase("why.oz"),
                            byMass,
                            volume(quantity, FLUID_OUNCE_ML, unit, ingredient, line).orElse(byMass))
                    : only(byMass);
        }
        if (unit.is(Kind.VOLUME)) {
            return volumes(quantity, unit, ingredient, line);
        }
        return measured(quantity, unit, ingredient, line);
    }

    private static Weight mass(Quantity quantity, CookingUnit unit) {
        double massG = quantity.count() * unit.amounts().get(0);
        return new Weight(
                massG, how(quantity, phrase("how.mass", quantity.words())), unit.source());
    }

    private static Weighing pieces(Quantity quantity, Ingredient ingredient, String line) {
        boolean known = ingredient.measure("piece").isPresent();
        Weight grams = mass(quantity, CookingUnit.GRAM);
        if (known) {
            Weighing pieces = measured(quantity, CookingUnit.PIECE, ingredient, line);
            return quantity.count() <= MANY
                    ? pieces
                    : both(phrase("why.bare"), grams, pieces.options.get(0));
        }
        if (quantity.count() < 5 || !UNCOUNTED.contains(ingredient.kind())) {
            return nothing(phrase("unknown.measure", quantity.text(), ingredient.phrase()));
        }
        return isLiquid(ingredient)
                ? both(
                        phrase("why.bare.volume"),
                        grams,
                        volume(quantity, 1, CookingUnit.MILLILITRE, ingredient, line).orElse(grams))
                : only(grams);
    }

    private static Weighing volumes(
            Quantity quantity, CookingUnit unit, Ingredient ingredient, String line) {
        List<Weight> all = new ArrayList<>();
        for (double millilitres : unit.amounts()) {
            volume(quantity, millilitres, unit, ingredient, line).ifPresent(all::add);
        }
        return all.isEmpty()
                ? nothing(phrase("unknown.volume", quantity.words(), ingredient.phrase()))
                : new Weighing(all, Optional.of(phrase("why.unit", unit.name())));
    }

    private static Optional<Weight> volume(
            Quantity quantity,
            double millilitresOfOne,
            CookingUnit unit,
            Ingredient ingredient,
            String line) {
        double millilitres = quantity.count() * millilitresOfOne;
        Phrase shown = phrase("millilitres", Math.round(millilitres * 100) / 100.0);
        Optional<HouseholdMeasure> heaped = heaped(ingredient, line, millilitresOfOne);
        boolean special = heaped.filter(one -> one.unit().contains(" ")).isPresent();
        if (ingredient.densityKgPerL().isPresent() && !special) {
            double density = ingredient.densityKgPerL().getAsDouble();
            return Optional.of(
                    new Weight(
                            millilitres * density,
                            how(quantity, phrase("how.volume", shown, density)),
                            source(unit, ingredient.source())));
        }
        if (heaped.isPresent()) {
            HouseholdMeasure measure = heaped.get();
            double massG = millilitres * measure.amount() / volumeOf(measure);
            return Optional.of(
                    new Weight(
                            massG,
                            how(
                                    quantity,
                                    phrase(
                                            "how.measure.heaped",
                                            shown,
                                            measure.amount(),
                                            measure.unit())),
                            source(unit, measure.source())));
        }
        boolean tiny = millilitresOfOne < 1;
        if (!isLiquid(ingredient) && !tiny) {
            return Optional.empty();
        }
        double density = tiny ? 1 : MixDensity.kgPerL(ingredient.composition());
        return Optional.of(
                new Weight(
                        millilitres * density,
                        how(
                                quantity,
                                phrase(
                                        "how.density.own",
                                        shown,
                                        Math.round(density * 1000) / 1000.0)),
                        source(unit, tiny ? PRACTICE : "formula for a mix")));
    }

    /** The cup that the line describes, else a cup, a tablespoon or a teaspoon. */
    private static Optional<HouseholdMeasure> heaped(
            Ingredient ingredient, String line, double millilitres) {
        Optional<HouseholdMeasure> described =
                ingredient.measures().stream()
                        .filter(one -> one.unit().startsWith("cup ") && !one.volume())
                        .filter(one -> line.contains(one.unit().substring(4)))
                        .findFirst();
        return described
                .or(
                        () ->
                                ingredient.measure(
                                        millilitres <= 5
                                                ? "tsp"
                                                : millilitres < 20 ? "tbsp" : "cup"))
                .or(() -> ingredient.measure("cup"))
                .or(() -> ingredient.measure("tbsp"))
                .or(() -> ingredient.measure("tsp"));
    }

    private static double volumeOf(HouseholdMeasure measure) {
        return measure.unit().startsWith("cup")
                ? CUP_ML
                : CookingUnit.of(measure.unit()).orElseThrow().amounts().get(0);
    }

    private static Weighing measured(
            Quantity quantity, CookingUnit unit, Ingredient ingredient, String line) {
        Optional<HouseholdMeasure> found =
                unit.name().equals("piece")
                        ? ingredient.measure(quantity.size()).or(() -> ingredient.measure("piece"))
                        : ingredient.measure(unit.name());
        if (found.isPresent()) {
            HouseholdMeasure measure = found.get();
            if (measure.volume()) {
                return volumes(
                        quantity,
                        new CookingUnit(
                                Kind.VOLUME, List.of(measure.amount()), "ml", measure.source()),
                        ingredient,
                        line);
            }
            return only(each(quantity, measure.amount(), measure.source()));
        }
        return switch (unit.name()) {
            case "can" ->
                    volumes(
                            quantity,
                            new CookingUnit(Kind.VOLUME, List.of(CAN_ML), "ml", PRACTICE),
                            ingredient,
                            line);
            case "jar" ->
                    volumes(quantity, CookingUnit.of("glass").orElseThrow(), ingredient, line);
            case "half" ->
                    measured(
                            quantity.with(quantity.count() / 2),
                            CookingUnit.PIECE,
                            ingredient,
                            line);
            default -> nothing(phrase("unknown.measure", unit.name(), ingredient.phrase()));
        };
    }

    private static Weight each(Quantity quantity, double massG, String source) {
        return new Weight(
                quantity.count() * massG,
                how(quantity, phrase("how.measure", quantity.count(), massG)),
                source);
    }

    private static Weight times(Weight weight, double factor) {
        return new Weight(
                weight.massG() * factor,
                phrase("how.times", factor, weight.how()),
                weight.source());
    }

    /** Whether a cook would pour it. */
    static boolean isLiquid(Ingredient ingredient) {
        if (ingredient.composition().percent(Component.WATER) < 25) {
            return false;
        }
        String name = ingredient.name();
        return switch (ingredient.kind()) {
            case ALCOHOL -> true;
            case DAIRY ->
                    name.matches(
                                    ".*\\b(milk|cream|half and half|buttermilk|kefir|eggnog|whey)\\b.*")
                            && !name.matches(".*(sour cream|cream cheese|clotted|powder).*");
            case PLANT -> name.matches(".*\\b(milk|drink|cream)\\b.*");
            case FRUIT -> name.endsWith("juice") || name.endsWith("coconut water");
            default ->
                    ingredient.composition().percent(Component.WATER) > 85
                            && ingredient.kind() != IngredientKind.OWN
                            && ingredient.densityKgPerL().isPresent();
        };
    }

    private static Phrase how(Quantity quantity, Phrase plain) {
        return quantity.range() ? phrase("how.range", quantity.text(), plain) : plain;
    }

    private static String source(CookingUnit unit, String other) {
        return unit.source().isEmpty() ? other : unit.source() + "; " + other;
    }

    private static Weighing only(Weight weight) {
        return new Weighing(List.of(weight), Optional.empty());
    }

    private static Weighing both(Phrase why, Weight one, Weight other) {
        return new Weighing(List.of(one, other), Optional.of(why));
    }

    private static Weighing nothing(Phrase why) {
        return new Weighing(List.of(), Optional.of(why));
    }

    static Phrase phrase(String key, Object... values) {
        return Phrase.of("recipe", key, values);
    }
}
