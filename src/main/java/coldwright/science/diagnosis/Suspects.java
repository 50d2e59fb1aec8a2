package coldwright.science.diagnosis;

import coldwright.science.Band;
import coldwright.science.Require;
import coldwright.science.balance.Trait;
import coldwright.science.diagnosis.Suspect.Side;
import coldwright.science.mix.Allergen;
import coldwright.science.mix.Component;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.LactoseLimit;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import java.util.List;

/** What may be behind each symptom, for one situation. */
final class Suspects {
    /** The cause of coarse crystals that lies in how a batch was kept. */
    static final String KEPT_BADLY = "swings or warming where it was kept";

    private static final double SORBET_BELOW_MILK_SOLIDS_PERCENT = 2;

    /** With less air than this nothing is seen to shrink; by judgement. */
    private static final double LEAST_AIR_TO_LOSE_PERCENT = 10;

    private static final List<Ingredient> SUGARS = List.of(Shelf.SUCROSE, Shelf.GLUCOSE);
    private static final List<Ingredient> SOLIDS =
            List.of(Shelf.SKIM_MILK_POWDER, Shelf.GLUCOSE_SYRUP_POWDER);
    private static final List<Ingredient> WATERY = List.of(Shelf.WATER, Shelf.WHOLE_MILK);
    private static final List<Ingredient> WATER = List.of(Shelf.WATER);
    private static final List<Ingredient> GUM = List.of(Shelf.LOCUST_BEAN_GUM);

    private final Situation situation;
    private final boolean sorbet;
    private final boolean milk;
    private final boolean egg;

    Suspects(Situation situation) {
        this.situation = situation;
        Mix mix = situation.mix();
        this.sorbet =
                mix.milkSolidsNotFatPercent() + mix.fatPercent() < SORBET_BELOW_MILK_SOLIDS_PERCENT;
        this.milk = mix.allergens().contains(Allergen.MILK);
        this.egg = mix.allergens().contains(Allergen.EGG);
    }

    /**
     * What to look at when somebody has tasted it: more than makes one expect it. What stays soft
     * is often said not to freeze, for one.
     */
    List<Suspect> behindTasted(Symptom symptom) {
        return switch (symptom) {
            case WILL_NOT_FREEZE -> List.of(littleIceWhenChurned(), littleIce(1));
            case TOO_SOFT -> List.of(littleIce(1), noStabiliser(0.3));
            case SHRINKS -> List.of(muchAir(1), littleProtein(0.6), noStabiliser(0.3));
            default -> behind(symptom);
        };
    }

    List<Suspect> behind(Symptom symptom) {
        return switch (symptom) {
            case ICY -> List.of(crystals(), swings(), muchIce(0.5), thin(0.7), noStabiliser(0.4));
            case HARD -> List.of(muchIce(1), thin(0.3));
            case WILL_NOT_FREEZE -> List.of(littleIceWhenChurned());
            case TOO_SOFT -> List.of(littleIce(1));
            case BUTTERY -> List.of(muchFat());
            case SANDY -> List.of(muchLactose());
            case WEAK -> List.of(thin(1), littleProtein(0.5), noStabiliser(0.5), muchAir(0.8));
            case GUMMY -> List.of(muchStabiliser(), muchStarch(), muchSolids());
            case TOO_SWEET -> List.of(sweet());
            case MELTS_FAST -> List.of(littleIce(0.7), noStabiliser(0.6), littleFat(0.5));
            case SHRINKS ->
                    situation.overrunPercent() < LEAST_AIR_TO_LOSE_PERCENT
                            ? List.of()
                            : behindTasted(symptom);
        };
    }

    private Suspect crystals() {
        double now = situation.crystalUm().map(Band::middle).orElse(0.0);
        double um = situation.steadyUm().map(steady -> Math.min(steady.middle(), now)).orElse(now);
        return new Suspect(
                "coarse crystals",
                Trait.of("mean crystal size", "µm", mix -> um),
                Usual.CRYSTALS,
                Side.ABOVE,
                1,
                List.of(),
                "freeze faster and keep it moving, harden at once, and store without swings in temperature",
                mix -> "");
    }

    /** What the freezer did to the crystals beyond what as long in a steady one does. */
    private Suspect swings() {
        double um = situation.crystalUm().map(Band::middle).orElse(0.0);
        Band steady = situation.steadyUm().orElse(Band.exactly(um));
        boolean felt = steady.middle() > Usual.CRYSTALS.most();
        Usual usual =
                felt
                        ? new Usual(
                                0,
                                Math.round(steady.middle() * 10) / 10.0,
                                Usual.CRYSTALS.slack(),
                                "what this model gives for as long in a steady freezer")
                        : Usual.CRYSTALS;
        return new Suspect(
                KEPT_BADLY,
                Trait.of("mean crystal size as it was kept", "µm", mix -> um),
                usual,
                Side.ABOVE,
                situation.steadyUm().isPresent() ? 1 : 0,
                List.of(),
                "keep it steadily cold and never let it warm: after as long so, its crystals would be %s µm (%s to %s)"
                        .formatted(
                                Require.spoken(Math.rint(steady.middle())),
                                Require.spoken(Math.rint(steady.low())),
                                Require.spoken(Math.rint(steady.high()))),
                mix -> "");
    }

    private Suspect muchIce(double share) {
        return new Suspect(
                "too much of the water is ice",
                Trait.iceAt(situation.servingC()),
                Usual.ICE_AT_SERVING,
                Side.ABOVE,
                share,
                SUGARS,
                "let it stand until it is warmer before you serve",
                Bringers::ofDepression);
    }

    private Suspect littleIce(double share) {
        return new Suspect(
                "too little of the water is ice",
                Trait.iceAt(situation.servingC()),
                Usual.ICE_AT_SERVING,
                Side.BELOW,
                share,
                WATERY,
                "serve it colder",
                Bringers::ofDepression);
    }

    private Suspect littleIceWhenChurned() {
        return new Suspect(
                "its freezing point is too low for this cold",
                Trait.iceAt(situation.coldC()),
                Usual.ICE_WHEN_CHURNED,
                Side.BELOW,
                1,
                WATERY,
                "freeze it colder than " + Require.spoken(situation.coldC()) + " °C",
                Bringers::ofDepression);
    }

    private Suspect thin(double share) {
        return new Suspect(
                "much free water, few solids",
                Trait.TOTAL_SOLIDS,
                sorbet ? Usual.SOLIDS_OF_SORBET : Usual.SOLIDS_WITH_MILK,
                Side.BELOW,
                share,
                sorbet ? List.of(Shelf.GLUCOSE_SYRUP_POWDER, Shelf.SUCROSE) : SOLIDS,
                milk
                        ? "boil the milk or juice down before mixing"
                        : "boil some of its water away before mixing",
                mix -> Bringers.of(mix, "water", Mix::waterPercent));
    }

    private Suspect noStabiliser(double share) {
        return new Suspect(
                "nothing that binds water",
                Trait.of(
                        "stabiliser, with a tenth of starch and fibre",
                        "%",
                        mix ->
                                mix.composition().percent(Component.STABILISER)
                                        + 0.1 * mix.composition().percent(Component.STARCH)
                                        + 0.1 * mix.composition().percent(Component.FIBRE)),
                Usual.STABILISER,
                Side.BELOW,
                share,
                GUM,
                egg
                        ? "cook a little corn starch or egg yolk into it (hold egg mixtures as your local food-safety rules say)"
                        : "cook a little corn starch into it",
                mix -> "");
    }

    private Suspect muchStabiliser() {
        return new Suspect(
                "too much gum",
                Trait.STABILISER,
                Usual.STABILISER,
                Side.ABOVE,
                1,
                WATERY,
                "weigh gums on a fine scale",
                mix -> Bringers.of(mix, "stabiliser", Trait.STABILISER::of));
    }

    private Suspect muchStarch() {
        return new Suspect(
                "too much starch",
                Trait.byMass("starch", mix -> mix.composition().percent(Component.STARCH)),
                Usual.STARCH,
                Side.ABOVE,
                0.8,
                WATERY,
                "use less starch",
                mix -> Bringers.of(mix, "starch", m -> m.composition().percent(Component.STARCH)));
    }

    private Suspect muchSolids() {
        return new Suspect(
                "too many solids",
                Trait.TOTAL_SOLIDS,
                sorbet ? Usual.SOLIDS_OF_SORBET : Usual.SOLIDS_WITH_MILK,
                Side.ABOVE,
                0.5,
                WATERY,
                milk ? "thin it with milk or water" : "thin it with water",
                mix -> Bringers.of(mix, "solids", Mix::totalSolidsPercent));
    }

    private Suspect muchFat() {
        return new Suspect(
                "so much fat that motion makes butter",
                Trait.FAT,
                Usual.FAT,
                Side.ABOVE,
                1,
                WATERY,
                "churn it colder and shorter, and stop as soon as it holds",
                mix -> Bringers.of(mix, "fat", Mix::fatPercent));
    }

    private Suspect littleFat(double share) {
        return new Suspect(
                "little fat to hold it up",
                Trait.FAT,
                sorbet ? new Usual(0, 100, 4, "a sorbet has none") : Usual.FAT,
                Side.BELOW,
                share,
                List.of(Shelf.HEAVY_CREAM),
                "serve it in cold dishes",
                mix -> Bringers.of(mix, "fat", Mix::fatPercent));
    }

    private Suspect muchLactose() {
        LactoseLimit limit = situation.mix().lactoseLimit();
        Usual usual =
                new Usual(
                        0,
                        limit.milkSolidsNotFatLimitPercent(),
                        1.5,
                        "Hyde and Rothwell 1973, as quoted");
        return new Suspect(
                "more milk sugar than stays dissolved in store",
                Trait.MILK_SOLIDS_NOT_FAT,
                usual,
                Side.ABOVE,
                1,
                List.of(Shelf.WATER, Shelf.HEAVY_CREAM, Shelf.SUCROSE),
                "eat it young and keep its temperature steady",
                mix -> Bringers.of(mix, "milk solids not fat", Mix::milkSolidsNotFatPercent));
    }

    private Suspect littleProtein(double share) {
        return new Suspect(
                "little protein to hold air",
                Trait.of("protein per 100 g of water", "g", Mix::proteinPer100gWater),
                sorbet ? new Usual(0, 9, 1.5, "a sorbet has none") : Usual.PROTEIN_PER_WATER,
                Side.BELOW,
                share,
                List.of(Shelf.SKIM_MILK_POWDER),
                holdsAir(),
                mix -> Bringers.of(mix, "protein", Mix::proteinPercent));
    }

    /** Only from what the batch has: who leaves milk or egg out may have to. */
    private String holdsAir() {
        if (egg) {
            return "add egg yolk, held as your local food-safety rules say";
        }
        return milk
                ? "beat less air in"
                : "beat less air in, because Coldwright suggests only what is in it already";
    }

    private Suspect muchAir(double share) {
        double most = 2.5 * situation.mix().totalSolidsPercent();
        return new Suspect(
                "more air than its solids hold",
                Trait.of("overrun", "%", mix -> situation.overrunPercent()),
                new Usual(0, most, 25, "2.5 times the solids, a rule of the trade from memory"),
                Side.ABOVE,
                share,
                List.of(),
                "beat less air in",
                mix -> "");
    }

    private Suspect sweet() {
        return new Suspect(
                "more sweetness than usual",
                Trait.SWEETNESS,
                sorbet ? Usual.SWEETNESS_OF_SORBET : Usual.SWEETNESS_WITH_MILK,
                Side.ABOVE,
                1,
                WATER,
                "put dextrose or glucose syrup in place of a part of the table sugar",
                mix -> Bringers.of(mix, "sweetness", Trait.SWEETNESS::of));
    }
}
