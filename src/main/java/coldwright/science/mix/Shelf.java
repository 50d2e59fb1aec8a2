package coldwright.science.mix;

import java.util.List;
import java.util.Map;

/**
 * The built-in ingredients, one constant each.
 *
 * <p>Their figures are in {@code shelf.csv} beside this class, with the number of the USDA row and
 * the inferred values. A constant's name is the ingredient's name: {@link #WHOLE_MILK} is {@code
 * whole milk}.
 */
public final class Shelf {
    private static final Map<String, Ingredient> ROWS = ShelfReader.read("shelf.csv");
    private static final IngredientNames NAMES = new IngredientNames(ROWS.values());

    public static final Ingredient WATER = row("water");
    public static final Ingredient SUCROSE = row("sucrose");
    public static final Ingredient GLUCOSE = row("glucose");

    /**
     * Dextrose as anhydrous glucose; dextrose from a shop is usually the monohydrate, with 9.1 %
     * crystal water: DEXTROSE_MONOHYDRATE.
     */
    public static final Ingredient DEXTROSE = GLUCOSE;

    public static final Ingredient FRUCTOSE = row("fructose");
    public static final Ingredient LACTOSE = row("lactose");
    public static final Ingredient MALTOSE = row("maltose");
    public static final Ingredient GALACTOSE = row("galactose");
    public static final Ingredient TREHALOSE = row("trehalose");
    public static final Ingredient SORBITOL = row("sorbitol");
    public static final Ingredient GLYCEROL = row("glycerol");
    public static final Ingredient ETHANOL = row("ethanol");
    public static final Ingredient SODIUM_CHLORIDE = row("sodium chloride");
    public static final Ingredient POTASSIUM_CHLORIDE = row("potassium chloride");
    public static final Ingredient CALCIUM_CHLORIDE = row("calcium chloride");
    public static final Ingredient CITRIC_ACID = row("citric acid");
    public static final Ingredient MALIC_ACID = row("malic acid");
    public static final Ingredient TARTARIC_ACID = row("tartaric acid");
    public static final Ingredient LACTIC_ACID = row("lactic acid");
    public static final Ingredient ACETIC_ACID = row("acetic acid");
    public static final Ingredient WHOLE_MILK = row("whole milk");
    public static final Ingredient SEMI_SKIMMED_MILK = row("semi-skimmed milk");
    public static final Ingredient LOW_FAT_MILK = row("low-fat milk");
    public static final Ingredient SKIMMED_MILK = row("skimmed milk");
    public static final Ingredient HALF_AND_HALF = row("half and half");
    public static final Ingredient LIGHT_CREAM = row("light cream");
    public static final Ingredient LIGHT_WHIPPING_CREAM = row("light whipping cream");
    public static final Ingredient HEAVY_CREAM = row("heavy cream");
    public static final Ingredient GOATS_MILK = row("goat's milk");
    public static final Ingredient BUFFALO_MILK = row("buffalo milk");
    public static final Ingredient SHEEPS_MILK = row("sheep's milk");
    public static final Ingredient MILK_3_5 = row("milk 3.5 %");
    public static final Ingredient MILK_3_8 = row("milk 3.8 %");
    public static final Ingredient CREAM_30 = row("cream 30 %");
    public static final Ingredient CREAM_35 = row("cream 35 %");
    public static final Ingredient CREAM_40 = row("cream 40 %");
    public static final Ingredient DOUBLE_CREAM = row("double cream");
    public static final Ingredient BUTTER_80 = row("butter 80 %");
    public static final Ingredient BUTTER = row("butter");
    public static final Ingredient SALTED_BUTTER = row("salted butter");
    public static final Ingredient BUTTER_OIL = row("butter oil");
    public static final Ingredient SKIM_MILK_POWDER = row("skim milk powder");
    public static final Ingredient WHOLE_MILK_POWDER = row("whole milk powder");
    public static final Ingredient BUTTERMILK_POWDER = row("buttermilk powder");
    public static final Ingredient EVAPORATED_MILK = row("evaporated milk");
    public static final Ingredient EVAPORATED_SKIMMED_MILK = row("evaporated skimmed milk");
    public static final Ingredient SWEETENED_CONDENSED_MILK = row("sweetened condensed milk");
    public static final Ingredient DULCE_DE_LECHE = row("dulce de leche");
    public static final Ingredient SWEETENED_CONDENSED_SKIMMED_MILK =
            row("sweetened condensed skimmed milk");
    public static final Ingredient YOGURT = row("yogurt");
    public static final Ingredient LOW_FAT_YOGURT = row("low-fat yogurt");
    public static final Ingredient SKIMMED_MILK_YOGURT = row("skimmed milk yogurt");
    public static final Ingredient BUTTERMILK = row("buttermilk");
    public static final Ingredient SOUR_CREAM = row("sour cream");
    public static final Ingredient CREAM_CHEESE = row("cream cheese");
    public static final Ingredient RICOTTA = row("ricotta");
    public static final Ingredient SWEET_WHEY = row("sweet whey");
    public static final Ingredient SWEET_WHEY_POWDER = row("sweet whey powder");
    public static final Ingredient EGG = row("egg");
    public static final Ingredient EGG_WHITE = row("egg white");
    public static final Ingredient EGG_YOLK = row("egg yolk");
    public static final Ingredient DRIED_EGG_YOLK = row("dried egg yolk");
    public static final Ingredient SUGARED_EGG_YOLK = row("sugared egg yolk");
    public static final Ingredient GRANULATED_SUGAR = row("granulated sugar");
    public static final Ingredient BROWN_SUGAR = row("brown sugar");
    public static final Ingredient ICING_SUGAR = row("icing sugar");
    public static final Ingredient HONEY = row("honey");
    public static final Ingredient MAPLE_SYRUP = row("maple syrup");
    public static final Ingredient CORN_SYRUP = row("corn syrup");
    public static final Ingredient HIGH_FRUCTOSE_CORN_SYRUP = row("high-fructose corn syrup");
    public static final Ingredient GLUCOSE_SYRUP = row("glucose syrup");
    public static final Ingredient GLUCOSE_SYRUP_POWDER = row("glucose syrup powder");
    public static final Ingredient MALTODEXTRIN = row("maltodextrin");
    public static final Ingredient INVERT_SYRUP = row("invert syrup");
    public static final Ingredient DEXTROSE_MONOHYDRATE = row("dextrose monohydrate");
    public static final Ingredient MALT_SYRUP = row("malt syrup");
    public static final Ingredient MOLASSES = row("molasses");
    public static final Ingredient CARAMEL_SAUCE = row("caramel sauce");
    public static final Ingredient CHOCOLATE_SYRUP = row("chocolate syrup");
    public static final Ingredient APRICOT_JAM = row("apricot jam");
    public static final Ingredient ORANGE_MARMALADE = row("orange marmalade");
    public static final Ingredient ORANGE_JUICE = row("orange juice");
    public static final Ingredient BLOOD_ORANGE_JUICE = row("blood orange juice");
    public static final Ingredient TANGERINE_JUICE = row("tangerine juice");
    public static final Ingredient ORANGE_JUICE_CONCENTRATE = row("orange juice concentrate");
    public static final Ingredient LEMON_JUICE = row("lemon juice");
    public static final Ingredient LIME_JUICE = row("lime juice");
    public static final Ingredient GRAPEFRUIT_JUICE = row("grapefruit juice");
    public static final Ingredient APPLE_JUICE = row("apple juice");
    public static final Ingredient GRAPE_JUICE = row("grape juice");
    public static final Ingredient PINEAPPLE_JUICE = row("pineapple juice");
    public static final Ingredient PASSION_FRUIT_JUICE = row("passion fruit juice");
    public static final Ingredient POMEGRANATE_JUICE = row("pomegranate juice");
    public static final Ingredient COCONUT_WATER = row("coconut water");
    public static final Ingredient STRAWBERRIES = row("strawberries");
    public static final Ingredient RASPBERRIES = row("raspberries");
    public static final Ingredient BLACKBERRIES = row("blackberries");
    public static final Ingredient BLUEBERRIES = row("blueberries");
    public static final Ingredient BLACKCURRANTS = row("blackcurrants");
    public static final Ingredient CRANBERRIES = row("cranberries");
    public static final Ingredient SOUR_CHERRIES = row("sour cherries");
    public static final Ingredient SWEET_CHERRIES = row("sweet cherries");
    public static final Ingredient MANGO = row("mango");
    public static final Ingredient BANANA = row("banana");
    public static final Ingredient PEACH = row("peach");
    public static final Ingredient APRICOT = row("apricot");
    public static final Ingredient PEAR = row("pear");
    public static final Ingredient APPLE = row("apple");
    public static final Ingredient PINEAPPLE = row("pineapple");
    public static final Ingredient PLUM = row("plum");
    public static final Ingredient CANTALOUPE_MELON = row("cantaloupe melon");
    public static final Ingredient WATERMELON = row("watermelon");
    public static final Ingredient KIWI = row("kiwi");
    public static final Ingredient FIG = row("fig");
    public static final Ingredient LYCHEE = row("lychee");
    public static final Ingredient PASSION_FRUIT = row("passion fruit");
    public static final Ingredient GUAVA = row("guava");
    public static final Ingredient RHUBARB = row("rhubarb");
    public static final Ingredient AVOCADO = row("avocado");
    public static final Ingredient COCOA_POWDER = row("cocoa powder");
    public static final Ingredient ALKALISED_COCOA_POWDER = row("alkalised cocoa powder");
    public static final Ingredient DARK_CHOCOLATE_70 = row("dark chocolate 70 %");
    public static final Ingredient DARK_CHOCOLATE = row("dark chocolate");
    public static final Ingredient MILK_CHOCOLATE = row("milk chocolate");
    public static final Ingredient WHITE_CHOCOLATE = row("white chocolate");
    public static final Ingredient UNSWEETENED_CHOCOLATE = row("unsweetened chocolate");
    public static final Ingredient HAZELNUT_CHOCOLATE_SPREAD = row("hazelnut chocolate spread");
    public static final Ingredient COCOA_BUTTER = row("cocoa butter");
    public static final Ingredient COCONUT_OIL = row("coconut oil");
    public static final Ingredient SUNFLOWER_OIL = row("sunflower oil");
    public static final Ingredient OLIVE_OIL = row("olive oil");
    public static final Ingredient ALMONDS = row("almonds");
    public static final Ingredient ALMOND_PASTE = row("almond paste");
    public static final Ingredient ALMOND_BUTTER = row("almond butter");
    public static final Ingredient ROASTED_HAZELNUTS = row("roasted hazelnuts");
    public static final Ingredient PISTACHIOS = row("pistachios");
    public static final Ingredient WALNUTS = row("walnuts");
    public static final Ingredient PECANS = row("pecans");
    public static final Ingredient CASHEWS = row("cashews");
    public static final Ingredient PEANUT_BUTTER = row("peanut butter");
    public static final Ingredient TAHINI = row("tahini");
    public static final Ingredient COCONUT_MILK = row("coconut milk");
    public static final Ingredient CANNED_COCONUT_MILK = row("canned coconut milk");
    public static final Ingredient COCONUT_CREAM = row("coconut cream");
    public static final Ingredient DESICCATED_COCONUT = row("desiccated coconut");
    public static final Ingredient OATS = row("oats");
    public static final Ingredient MALTED_MILK_POWDER = row("malted milk powder");
    public static final Ingredient BARLEY_MALT_FLOUR = row("barley malt flour");
    public static final Ingredient CORN_STARCH = row("corn starch");
    public static final Ingredient RICE_FLOUR = row("rice flour");
    public static final Ingredient ARROWROOT = row("arrowroot");
    public static final Ingredient WHEAT_FLOUR = row("wheat flour");
    public static final Ingredient WAFER_CONE = row("wafer cone");
    public static final Ingredient SUGAR_CONE = row("sugar cone");
    public static final Ingredient GRAHAM_BISCUIT = row("graham biscuit");
    public static final Ingredient SOY_DRINK = row("soy drink");
    public static final Ingredient RICE_DRINK = row("rice drink");
    public static final Ingredient OAT_DRINK = row("oat drink");
    public static final Ingredient COFFEE = row("coffee");
    public static final Ingredient ESPRESSO = row("espresso");
    public static final Ingredient INSTANT_COFFEE = row("instant coffee");
    public static final Ingredient TEA = row("tea");
    public static final Ingredient VANILLA_EXTRACT = row("vanilla extract");
    public static final Ingredient GROUND_CINNAMON = row("ground cinnamon");
    public static final Ingredient SALT = row("salt");
    public static final Ingredient RUM_40 = row("rum 40 %");
    public static final Ingredient VODKA_40 = row("vodka 40 %");
    public static final Ingredient BRANDY_40 = row("brandy 40 %");
    public static final Ingredient WHISKY_43 = row("whisky 43 %");
    public static final Ingredient RUM_50 = row("rum 50 %");
    public static final Ingredient NEUTRAL_SPIRIT_96 = row("neutral spirit 96 %");
    public static final Ingredient ORANGE_LIQUEUR_40 = row("orange liqueur 40 %");
    public static final Ingredient LEMON_LIQUEUR_30 = row("lemon liqueur 30 %");
    public static final Ingredient COFFEE_LIQUEUR = row("coffee liqueur");
    public static final Ingredient CREAM_LIQUEUR = row("cream liqueur");
    public static final Ingredient RED_WINE = row("red wine");
    public static final Ingredient WHITE_WINE = row("white wine");
    public static final Ingredient SWEET_WINE = row("sweet wine");
    public static final Ingredient BEER = row("beer");
    public static final Ingredient GUAR_GUM = row("guar gum");
    public static final Ingredient LOCUST_BEAN_GUM = row("locust bean gum");
    public static final Ingredient XANTHAN_GUM = row("xanthan gum");
    public static final Ingredient CARRAGEENAN = row("carrageenan");
    public static final Ingredient SODIUM_ALGINATE = row("sodium alginate");
    public static final Ingredient CELLULOSE_GUM = row("cellulose gum");
    public static final Ingredient PECTIN = row("pectin");
    public static final Ingredient AGAR = row("agar");
    public static final Ingredient GELATINE = row("gelatine");
    public static final Ingredient LECITHIN = row("lecithin");
    public static final Ingredient MONO_AND_DIGLYCERIDES = row("mono- and diglycerides");

    private Shelf() {}

    /** {@return all ingredients on the shelf, in the order of the file} */
    public static List<Ingredient> all() {
        return List.copyOf(ROWS.values());
    }

    /**
     * Finds an ingredient by name, ignoring case, plural, hyphens and the position of a percentage.
     *
     * @param name an everyday name, such as {@code Blood-orange juice} or {@code 40 % rum}
     * @throws IllegalArgumentException if there is none of that name; the message lists the nearest
     */
    public static Ingredient find(String name) {
        return NAMES.find(name);
    }

    private static Ingredient row(String name) {
        Ingredient ingredient = ROWS.get(name);
        if (ingredient == null) {
            throw new IllegalStateException("shelf.csv has no row \"%s\"".formatted(name));
        }
        return ingredient;
    }
}
