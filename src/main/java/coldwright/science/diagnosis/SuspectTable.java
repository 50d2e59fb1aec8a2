package coldwright.science.diagnosis;

import coldwright.science.Band;
import coldwright.science.Require;
import coldwright.science.balance.Trait;
import coldwright.science.diagnosis.SuspectMeasure.Side;
import coldwright.science.mix.Allergen;
import coldwright.science.mix.Component;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.LactoseSaturation;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import java.util.List;

/** What may be behind each symptom, for one situation. */
final class SuspectTable {
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

    SuspectTable(Situation situation) {
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
    List<SuspectMeasure> behindTasted(Symptom symptom) {
        return switch (symptom) {
            case WILL_NOT_FREEZE -> List.of(littleIceWhenChurned(), littleIce(1));
            case TOO_SOFT -> List.of(littleIce(1), noStabiliser(0.3));
            case SHRINKS -> List.of(muchAir(1), littleProtein(0.6), noStabiliser(0.3));
            default -> behind(symptom);
        };
    }

    List<SuspectMeasure> behind(Symptom symptom) {
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

    private SuspectMeasure crystals() {
        double now = situation.crystalUm().map(Band::middle).orElse(0.0);
        double um = situation.steadyUm().map(steady -> Math.min(steady.middle(), now)).orElse(now);
        return new SuspectMeasure(
                "coarse crystals",
                Trait.of("mean crystal size", "µm", mix -> um),
                UsualRange.CRYSTALS,
                Side.ABOVE,
                1,
                List.of(),
                "freeze faster and keep it moving, harden at once, and store without swings in temperature",
                mix -> "");
    }

    /** What the freezer did to the crystals beyond what as long in a steady one does. */
    private SuspectMeasure swings() {
        double um = situation.crystalUm().map(Band::middle).orElse(0.0);
        Band steady = situation.steadyUm().orElse(Band.exactly(um));
        boolean felt = steady.middle() > UsualRange.CRYSTALS.most();
        UsualRange usualRange =
                felt
                        ? new UsualRange(
                                0,
                                Math.round(steady.middle() * 10) / 10.0,
                                UsualRange.CRYSTALS.slack(),
                                "what this model gives for as long in a steady freezer")
                        : UsualRange.CRYSTALS;
        return new SuspectMeasure(
                KEPT_BADLY,
                Trait.of("mean crystal size as it was kept", "µm", mix -> um),
                usualRange,
                Side.ABOVE,
                situation.steadyUm().isPresent() ? 1 : 0,
                List.of(),
                "keep it steadily cold and never let it warm: after as long so, its crystals would be %s µm (%s to %s)"
                        .formatted(
                                Require.format(Math.rint(steady.middle())),
                                Require.format(Math.rint(steady.low())),
                                Require.format(Math.rint(steady.high()))),
                mix -> "");
    }

    private SuspectMeasure muchIce(double share) {
        return new SuspectMeasure(
                "too much of the water is ice",
                Trait.iceAt(situation.servingC()),
                UsualRange.ICE_AT_SERVING,
                Side.ABOVE,
                share,
                SUGARS,
                "let it stand until it is warmer before you serve",
                ContributionText::ofDepression);
    }

    private SuspectMeasure littleIce(double share) {
        return new SuspectMeasure(
                "too little of the water is ice",
                Trait.iceAt(situation.servingC()),
                UsualRange.ICE_AT_SERVING,
                Side.BELOW,
                share,
                WATERY,
                "serve it colder",
                ContributionText::ofDepression);
    }

    private SuspectMeasure littleIceWhenChurned() {
        return new SuspectMeasure(
                "its freezing point is too low for this cold",
                Trait.iceAt(situation.coldC()),
                UsualRange.ICE_WHEN_CHURNED,
                Side.BELOW,
                1,
                WATERY,
                "freeze it colder than " + Require.format(situation.coldC()) + " °C",
                ContributionText::ofDepression);
    }

    private SuspectMeasure thin(double share) {
        return new SuspectMeasure(
                "much free water, few solids",
                Trait.TOTAL_SOLIDS,
                sorbet ? UsualRange.SOLIDS_OF_SORBET : UsualRange.SOLIDS_WITH_MILK,
                Side.BELOW,
                share,
                sorbet ? List.of(Shelf.GLUCOSE_SYRUP_POWDER, Shelf.SUCROSE) : SOLIDS,
                milk
                        ? "boil the milk or juice down before mixing"
                        : "boil some of its water away before mixing",
                mix -> ContributionText.of(mix, "water", Mix::waterPercent));
    }

    private SuspectMeasure noStabiliser(double share) {
        return new SuspectMeasure(
                "nothing that binds water",
                Trait.of(
                        "stabiliser, with a tenth of starch and fibre",
                        "%",
                        mix ->
                                mix.composition().percent(Component.STABILISER)
                                        + 0.1 * mix.composition().percent(Component.STARCH)
                                        + 0.1 * mix.composition().percent(Component.FIBRE)),
                UsualRange.STABILISER,
                Side.BELOW,
                share,
                GUM,
                egg
                        ? "cook a little corn starch or egg yolk into it (hold egg mixtures as your local food-safety rules say)"
                        : "cook a little corn starch into it",
                mix -> "");
    }

    private SuspectMeasure muchStabiliser() {
        return new SuspectMeasure(
                "too much gum",
                Trait.STABILISER,
                UsualRange.STABILISER,
                Side.ABOVE,
                1,
                WATERY,
                "weigh gums on a fine scale",
                mix -> ContributionText.of(mix, "stabiliser", Trait.STABILISER::of));
    }

    private SuspectMeasure muchStarch() {
        return new SuspectMeasure(
                "too much starch",
                Trait.byMass("starch", mix -> mix.composition().percent(Component.STARCH)),
                UsualRange.STARCH,
                Side.ABOVE,
                0.8,
                WATERY,
                "use less starch",
                mix ->
                        ContributionText.of(
                                mix, "starch", m -> m.composition().percent(Component.STARCH)));
    }

    private SuspectMeasure muchSolids() {
        return new SuspectMeasure(
                "too many solids",
                Trait.TOTAL_SOLIDS,
                sorbet ? UsualRange.SOLIDS_OF_SORBET : UsualRange.SOLIDS_WITH_MILK,
                Side.ABOVE,
                0.5,
                WATERY,
                milk ? "thin it with milk or water" : "thin it with water",
                mix -> ContributionText.of(mix, "solids", Mix::totalSolidsPercent));
    }

    private SuspectMeasure muchFat() {
        return new SuspectMeasure(
                "so much fat that motion makes butter",
                Trait.FAT,
                UsualRange.FAT,
                Side.ABOVE,
                1,
                WATERY,
                "churn it colder and shorter, and stop as soon as it holds",
                mix -> ContributionText.of(mix, "fat", Mix::fatPercent));
    }

    private SuspectMeasure littleFat(double share) {
        return new SuspectMeasure(
                "little fat to hold it up",
                Trait.FAT,
                sorbet ? new UsualRange(0, 100, 4, "a sorbet has none") : UsualRange.FAT,
                Side.BELOW,
                share,
                List.of(Shelf.HEAVY_CREAM),
                "serve it in cold dishes",
                mix -> ContributionText.of(mix, "fat", Mix::fatPercent));
    }

    private SuspectMeasure muchLactose() {
        LactoseSaturation limit = situation.mix().lactoseLimit();
        UsualRange usualRange =
                new UsualRange(
                        0,
                        limit.milkSolidsNotFatLimitPercent(),
                        1.5,
                        "Hyde and Rothwell 1973, as quoted");
        return new SuspectMeasure(
                "more milk sugar than stays dissolved in store",
                Trait.MILK_SOLIDS_NOT_FAT,
                usualRange,
                Side.ABOVE,
                1,
                List.of(Shelf.WATER, Shelf.HEAVY_CREAM, Shelf.SUCROSE),
                "eat it young and keep its temperature steady",
                mix ->
                        ContributionText.of(
                                mix, "milk solids not fat", Mix::milkSolidsNotFatPercent));
    }

    private SuspectMeasure littleProtein(double share) {
        return new SuspectMeasure(
                "little protein to hold air",
                Trait.of("protein per 100 g of water", "g", Mix::proteinPer100gWater),
                sorbet
                        ? new UsualRange(0, 9, 1.5, "a sorbet has none")
                        : UsualRange.PROTEIN_PER_WATER,
                Side.BELOW,
                share,
                List.of(Shelf.SKIM_MILK_POWDER),
                holdsAir(),
                mix -> ContributionText.of(mix, "protein", Mix::proteinPercent));
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

    private SuspectMeasure muchAir(double share) {
        double most = 2.5 * situation.mix().totalSolidsPercent();
        return new SuspectMeasure(
                "more air than its solids hold",
                Trait.of("overrun", "%", mix -> situation.overrunPercent()),
                new UsualRange(
                        0, most, 25, "2.5 times the solids, a rule of the trade from memory"),
                Side.ABOVE,
                share,
                List.of(),
                "beat less air in",
                mix -> "");
    }

    private SuspectMeasure sweet() {
        return new SuspectMeasure(
                "more sweetness than usual",
                Trait.SWEETNESS,
                sorbet ? UsualRange.SWEETNESS_OF_SORBET : UsualRange.SWEETNESS_WITH_MILK,
                Side.ABOVE,
                1,
                WATER,
                "put dextrose or glucose syrup in place of a part of the table sugar",
                mix -> ContributionText.of(mix, "sweetness", Trait.SWEETNESS::of));
    }
}
