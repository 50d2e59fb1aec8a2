package coldwright.science.mix;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;

/** The ingredients that come with the program, each by its own constant. */
public final class Shelf {
    public static final Ingredient WATER = pure("water", Component.WATER);
    public static final Ingredient SUCROSE = pure("sucrose", Component.SUCROSE);
    public static final Ingredient GLUCOSE = pure("glucose", Component.GLUCOSE);
    public static final Ingredient FRUCTOSE = pure("fructose", Component.FRUCTOSE);
    public static final Ingredient LACTOSE = pure("lactose", Component.LACTOSE);
    public static final Ingredient MALTOSE = pure("maltose", Component.MALTOSE);
    public static final Ingredient ETHANOL = pure("ethanol", Component.ALCOHOL);
    public static final Ingredient SODIUM_CHLORIDE = pure("sodium chloride", Component.SALT);
    public static final Ingredient WHOLE_MILK = milk("whole milk", 88.13, 3.27, 3.15, 4.78, .67);
    public static final Ingredient CREAM_36 = milk("cream 36 %", 57.71, 37.0, 2.05, 2.79, .45);
    public static final Ingredient SKIM_MILK_POWDER =
            milk("skim milk powder", 3.16, .77, 36.16, 51.98, 7.93);
    public static final Ingredient RUM_40 =
            Ingredient.own(
                    "rum 40 %",
                    Composition.NOTHING.with(33.4, Component.ALCOHOL).with(66.6, Component.WATER));

    private static final List<Ingredient> ALL =
            List.of(
                    WATER,
                    SUCROSE,
                    GLUCOSE,
                    FRUCTOSE,
                    LACTOSE,
                    MALTOSE,
                    ETHANOL,
                    SODIUM_CHLORIDE,
                    WHOLE_MILK,
                    CREAM_36,
                    SKIM_MILK_POWDER,
                    RUM_40);

    private Shelf() {}

    /**
     * Everything on the shelf.
     *
     * @return the ingredients
     */
    public static List<Ingredient> all() {
        return ALL;
    }

    /**
     * The ingredient of a name, whatever its case, plural or hyphens.
     *
     * @param name an everyday name
     * @return the ingredient
     * @throws IllegalArgumentException if nothing on the shelf is called so
     */
    public static Ingredient find(String name) {
        return ALL.stream()
                .filter(i -> i.name().equals(name.strip().toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "\"%s\" is not on the shelf".formatted(name)));
    }

    private static Ingredient pure(String name, Component component) {
        return Ingredient.own(name, Composition.NOTHING.with(100, component));
    }

    private static Ingredient milk(
            String name, double water, double fat, double protein, double lactose, double ash) {
        return new Ingredient(
                name,
                List.of(),
                Composition.NOTHING
                        .with(water, Component.WATER)
                        .with(fat, Component.MILK_FAT)
                        .with(protein, Component.MILK_PROTEIN)
                        .with(lactose, Component.LACTOSE)
                        .with(ash, Component.MILK_SALTS)
                        .with(protein + lactose + ash, Tally.MILK_SOLIDS_NOT_FAT),
                OptionalDouble.empty(),
                Set.of(Allergen.MILK),
                "USDA SR24",
                "");
    }
}
