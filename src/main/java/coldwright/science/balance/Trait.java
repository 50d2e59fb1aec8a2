package coldwright.science.balance;

import coldwright.science.Temperature;
import coldwright.science.mix.Component;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Tally;
import coldwright.science.sensory.Sweetness;
import coldwright.words.Phrase;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * A measurable property of a mix, which a balance can aim at.
 *
 * <p>A trait is <em>by mass</em> if it is a share of the whole: it then mixes in proportion and a
 * balance solves it directly. All others are solved by iteration.
 */
public final class Trait {
    private static final String AREA = "science.balance";
    private static final Map<String, Trait> NAMED = new LinkedHashMap<>();

    /** USDA SR24 01125, egg yolk: 26.54 of 47.69 g of solids are fat. */
    private static final double FAT_IN_YOLK_SOLIDS = 26.54 / 47.69;

    public static final Trait WATER = component("water", Component.Kind.WATER);

    /**
     * Fat of milk and everything else but egg yolk, as the trade balances a mix: yolk fat counts
     * only in {@link #YOLK_SOLIDS}. 0 or more, in % by mass.
     */
    public static final Trait FAT =
            share(
                    "fat",
                    mix ->
                            Math.max(
                                    0,
                                    mix.fatPercent()
                                            - FAT_IN_YOLK_SOLIDS
                                                    * mix.composition()
                                                            .per100g(Tally.YOLK_SOLIDS)));

    /** All fat, that of egg yolk included. */
    public static final Trait TOTAL_FAT = component("total-fat", Component.Kind.FAT);

    public static final Trait MILK_FAT =
            share("milk-fat", mix -> mix.composition().percent(Component.MILK_FAT));
    public static final Trait MILK_SOLIDS_NOT_FAT =
            share("milk-solids-not-fat", Mix::milkSolidsNotFatPercent);
    public static final Trait SUGARS = share("sugars", Mix::sugarsPercent);
    public static final Trait SUCROSE =
            share("sucrose", mix -> mix.composition().percent(Component.SUCROSE));
    public static final Trait LACTOSE =
            share("lactose", mix -> mix.composition().percent(Component.LACTOSE));
    public static final Trait PROTEIN = share("protein", Mix::proteinPercent);
    public static final Trait TOTAL_SOLIDS = share("total-solids", Mix::totalSolidsPercent);
    public static final Trait ALCOHOL = share("alcohol", Mix::alcoholPercent);
    public static final Trait SALT = share("salt", Mix::saltPercent);
    public static final Trait STABILISER =
            share("stabiliser", mix -> mix.composition().percent(Component.STABILISER));
    public static final Trait EMULSIFIER =
            share("emulsifier", mix -> mix.composition().percent(Component.EMULSIFIER));
    public static final Trait YOLK_SOLIDS =
            share("yolk-solids", mix -> mix.composition().per100g(Tally.YOLK_SOLIDS));

    /** Grams of sucrose in 100 g that would be as sweet, by the middle of the published spread. */
    public static final Trait SWEETNESS =
            share("sweetness", mix -> Sweetness.of(mix).sucroseEquivalentPercent().middle());

    /** Grams of sugars for each 100 g of water. */
    public static final Trait SUGAR_PER_WATER =
            named(of("sugar-per-water", "g/100 g", Mix::sugarPer100gWater));

    /** The temperature at which the first ice can stay. */
    public static final Trait INITIAL_FREEZING_POINT =
            named(
                    new Trait(
                            name("initial-freezing-point"),
                            plain("°C"),
                            5,
                            false,
                            Mix::initialFreezingPointC));

    private final Phrase name;
    private final String words;
    private final Phrase unit;
    private final double weight;
    private final boolean byMass;
    private final ToDoubleFunction<Mix> measure;

    private Trait(
            Phrase name,
            Phrase unit,
            double weight,
            boolean byMass,
            ToDoubleFunction<Mix> measure) {
        this.name = name;
        this.words = name.english();
        this.unit = unit;
        this.weight = weight;
        this.byMass = byMass;
        this.measure = measure;
    }

    private static Phrase name(String words) {
        return Phrase.named(AREA, "trait", words);
    }

    private static Phrase plain(String text) {
        return Phrase.of(AREA, "plain", text);
    }

    private static Trait named(Trait trait) {
        NAMED.put(trait.words, trait);
        return trait;
    }

    private static Trait share(String words, ToDoubleFunction<Mix> percentOf) {
        return named(byMass(words, percentOf));
    }

    private static Trait component(String words, Component.Kind kind) {
        return share(words, mix -> mix.composition().percent(kind));
    }

    /**
     * A trait that is a share of the whole mass and so mixes in proportion.
     *
     * @param words its name in the trade
     * @param percentOf gives the share in a mix, % by mass
     */
    public static Trait byMass(String words, ToDoubleFunction<Mix> percentOf) {
        return new Trait(name(words), plain("%"), 1, true, percentOf);
    }

    /**
     * Any other trait.
     *
     * @param words its name in the trade
     * @param unit its unit
     * @param measure gives its value for a mix, in that unit; the same for ten times the mix
     */
    public static Trait of(String words, String unit, ToDoubleFunction<Mix> measure) {
        return new Trait(name(words), plain(unit), 1, false, measure);
    }

    /**
     * The share of the water that is ice at a temperature.
     *
     * @param temperatureC the temperature, °C, −60 to 120
     * @return the trait, in % of the water
     */
    public static Trait iceAt(double temperatureC) {
        Temperature.require("temperatureC", temperatureC);
        return new Trait(
                Phrase.of(AREA, "ice-at", temperatureC),
                Phrase.of(AREA, "of-water"),
                1,
                false,
                mix -> mix.freezingCurve().icePercentAt(temperatureC));
    }

    /**
     * Finds a trait by its name in a recipe file.
     *
     * @param words its name, such as {@code milk solids not fat} or {@code ice at -18 °C}
     * @throws IllegalArgumentException if there is none of that name
     */
    public static Trait named(String words) {
        String plain = words.strip().toLowerCase(Locale.ROOT).replace('−', '-');
        if (NAMED.containsKey(plain)) {
            return NAMED.get(plain);
        }
        if (plain.startsWith("ice at ")) {
            String number = plain.substring(7).replace("°c", "").strip();
            try {
                return iceAt(Double.parseDouble(number));
            } catch (NumberFormatException e) {
                throw new IllegalArgumentException(
                        "\"%s\" has no temperature; write it like \"ice at -18 °C\""
                                .formatted(words),
                        e);
            }
        }
        throw new IllegalArgumentException(
                "\"%s\" isn't a target; use %s or ice at a temperature"
                        .formatted(words.strip(), String.join(", ", NAMED.keySet())));
    }

    /** Its name. */
    public String words() {
        return words;
    }

    /** Its name in any language. */
    public Phrase name() {
        return name;
    }

    /** {@return its unit, such as {@code %}} */
    public String unit() {
        return unit.english();
    }

    /** Its unit in any language. */
    public Phrase unitName() {
        return unit;
    }

    /**
     * Its value for a mix.
     *
     * @return the value, in its unit
     */
    public double of(Mix mix) {
        return measure.applyAsDouble(mix);
    }

    /** Weight of one of its units against 1 % by mass when targets compete. */
    double weight() {
        return weight;
    }

    boolean isByMass() {
        return byMass;
    }

    @Override
    public String toString() {
        return words;
    }
}
