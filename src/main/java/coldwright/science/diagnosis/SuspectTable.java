package coldwright.science.diagnosis;

import coldwright.science.Band;
import coldwright.science.Rounded;
import coldwright.science.balance.Trait;
import coldwright.science.diagnosis.SuspectMeasure.Side;
import coldwright.science.mix.Allergen;
import coldwright.science.mix.Component;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.LactoseSaturation;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;
import coldwright.words.Phrase;

import java.util.List;
import java.util.Optional;

/** Possible causes of each symptom in one situation. */
final class SuspectTable {
    private static final double SORBET_BELOW_MILK_SOLIDS_PERCENT = 2;

    /** Below this overrun no shrinking is visible; by judgement. */
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
     * Measures to check for a tasted symptom; these are more than those that predict it. For
     * example, a batch that stays soft is often said not to freeze.
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
                CauseKind.COARSE_CRYSTALS,
                Trait.of("mean-crystal-size", "µm", mix -> um),
                UsualRange.CRYSTALS,
                Side.ABOVE,
                1,
                List.of(),
                advice("crystals"),
                mix -> Optional.empty());
    }

    /** Crystal growth beyond that of the same time in a steady freezer. */
    private SuspectMeasure swings() {
        double um = situation.crystalUm().map(Band::middle).orElse(0.0);
        Band steady = situation.steadyUm().orElse(Band.exactly(um));
        boolean felt = steady.middle() > UsualRange.CRYSTALS.most();
        UsualRange usualRange =
                felt
                        ? new UsualRange(
                                0,
                                Rounded.tenth(steady.middle()),
                                UsualRange.CRYSTALS.slack(),
                                UsualRange.source("steady"))
                        : UsualRange.CRYSTALS;
        return new SuspectMeasure(
                CauseKind.STORAGE,
                Trait.of("mean-crystal-size-as-stored", "µm", mix -> um),
                usualRange,
                Side.ABOVE,
                situation.steadyUm().isPresent() ? 1 : 0,
                List.of(),
                advice("steady", steady.middle(), steady.low(), steady.high()),
                mix -> Optional.empty());
    }

    private SuspectMeasure muchIce(double share) {
        return new SuspectMeasure(
                CauseKind.MUCH_ICE,
                Trait.iceAt(situation.servingC()),
                UsualRange.ICE_AT_SERVING,
                Side.ABOVE,
                share,
                SUGARS,
                advice("warmer"),
                Contributions::ofDepression);
    }

    private SuspectMeasure littleIce(double share) {
        return new SuspectMeasure(
                CauseKind.LITTLE_ICE,
                Trait.iceAt(situation.servingC()),
                UsualRange.ICE_AT_SERVING,
                Side.BELOW,
                share,
                WATERY,
                advice("colder"),
                Contributions::ofDepression);
    }

    private SuspectMeasure littleIceWhenChurned() {
        return new SuspectMeasure(
                CauseKind.LOW_FREEZING_POINT,
                Trait.iceAt(situation.coldC()),
                UsualRange.ICE_WHEN_CHURNED,
                Side.BELOW,
                1,
                WATERY,
                advice("freeze-colder", situation.coldC()),
                Contributions::ofDepression);
    }

    private SuspectMeasure thin(double share) {
        return new SuspectMeasure(
                CauseKind.FEW_SOLIDS,
                Trait.TOTAL_SOLIDS,
                sorbet ? UsualRange.SOLIDS_OF_SORBET : UsualRange.SOLIDS_WITH_MILK,
                Side.BELOW,
                share,
                sorbet ? List.of(Shelf.GLUCOSE_SYRUP_POWDER, Shelf.SUCROSE) : SOLIDS,
                advice(milk ? "boil-down-milk" : "boil-down"),
                mix -> Contributions.of(mix, "water", Mix::waterPercent));
    }

    private SuspectMeasure noStabiliser(double share) {
        return new SuspectMeasure(
                CauseKind.NO_STABILISER,
                Trait.of(
                        "stabiliser-with-starch",
                        "%",
                        mix ->
                                mix.composition().percent(Component.STABILISER)
                                        + 0.1 * mix.composition().percent(Component.STARCH)
                                        + 0.1 * mix.composition().percent(Component.FIBRE)),
                UsualRange.STABILISER,
                Side.BELOW,
                share,
                GUM,
                advice(egg ? "starch-or-yolk" : "starch"),
                mix -> Optional.empty());
    }

    private SuspectMeasure muchStabiliser() {
        return new SuspectMeasure(
                CauseKind.MUCH_STABILISER,
                Trait.STABILISER,
                UsualRange.STABILISER,
                Side.ABOVE,
                1,
                WATERY,
                advice("scale"),
                mix -> Contributions.of(mix, "stabiliser", Trait.STABILISER::of));
    }

    private SuspectMeasure muchStarch() {
        return new SuspectMeasure(
                CauseKind.MUCH_STARCH,
                Trait.byMass("starch", mix -> mix.composition().percent(Component.STARCH)),
                UsualRange.STARCH,
                Side.ABOVE,
                0.8,
                WATERY,
                advice("less-starch"),
                mix ->
                        Contributions.of(
                                mix, "starch", m -> m.composition().percent(Component.STARCH)));
    }

    private SuspectMeasure muchSolids() {
        return new SuspectMeasure(
                CauseKind.MANY_SOLIDS,
                Trait.TOTAL_SOLIDS,
                sorbet ? UsualRange.SOLIDS_OF_SORBET : UsualRange.SOLIDS_WITH_MILK,
                Side.ABOVE,
                0.5,
                WATERY,
                advice(milk ? "thin-with-milk" : "thin"),
                mix -> Contributions.of(mix, "solids", Mix::totalSolidsPercent));
    }

    private SuspectMeasure muchFat() {
        return new SuspectMeasure(
                CauseKind.MUCH_FAT,
                Trait.FAT,
                UsualRange.FAT,
                Side.ABOVE,
                1,
                WATERY,
                advice("churn-shorter"),
                mix -> Contributions.of(mix, "fat", Mix::fatPercent));
    }

    private SuspectMeasure littleFat(double share) {
        return new SuspectMeasure(
                CauseKind.LITTLE_FAT,
                Trait.FAT,
                sorbet ? new UsualRange(0, 100, 4, UsualRange.source("sorbet")) : UsualRange.FAT,
                Side.BELOW,
                share,
                List.of(Shelf.HEAVY_CREAM),
                advice("cold-dishes"),
                mix -> Contributions.of(mix, "fat", Mix::fatPercent));
    }

    private SuspectMeasure muchLactose() {
        LactoseSaturation limit = situation.mix().lactoseLimit();
        UsualRange usualRange =
                new UsualRange(
                        0, limit.milkSolidsNotFatLimitPercent(), 1.5, UsualRange.source("lactose"));
        return new SuspectMeasure(
                CauseKind.MUCH_LACTOSE,
                Trait.MILK_SOLIDS_NOT_FAT,
                usualRange,
                Side.ABOVE,
                1,
                List.of(Shelf.WATER, Shelf.HEAVY_CREAM, Shelf.SUCROSE),
                advice("eat-soon"),
                mix -> Contributions.of(mix, "msnf", Mix::milkSolidsNotFatPercent));
    }

    private SuspectMeasure littleProtein(double share) {
        return new SuspectMeasure(
                CauseKind.LITTLE_PROTEIN,
                Trait.of("protein-per-100-g-of-water", "g", Mix::proteinPer100gWater),
                sorbet
                        ? new UsualRange(0, 9, 1.5, UsualRange.source("sorbet"))
                        : UsualRange.PROTEIN_PER_WATER,
                Side.BELOW,
                share,
                List.of(Shelf.SKIM_MILK_POWDER),
                holdsAir(),
                mix -> Contributions.of(mix, "protein", Mix::proteinPercent));
    }

    /** Only ingredients of the batch: a cook who leaves milk or egg out may have to. */
    private Phrase holdsAir() {
        return advice(egg ? "yolk" : milk ? "less-air" : "less-air-only");
    }

    private static Phrase advice(String key, Object... values) {
        return Phrase.of(ExpectedFindings.AREA, "advice." + key, values);
    }

    private SuspectMeasure muchAir(double share) {
        double most = 2.5 * situation.mix().totalSolidsPercent();
        return new SuspectMeasure(
                CauseKind.MUCH_AIR,
                Trait.of("overrun", "%", mix -> situation.overrunPercent()),
                new UsualRange(0, most, 25, UsualRange.source("air")),
                Side.ABOVE,
                share,
                List.of(),
                advice("less-air"),
                mix -> Optional.empty());
    }

    private SuspectMeasure sweet() {
        return new SuspectMeasure(
                CauseKind.MUCH_SWEETNESS,
                Trait.SWEETNESS,
                sorbet ? UsualRange.SWEETNESS_OF_SORBET : UsualRange.SWEETNESS_WITH_MILK,
                Side.ABOVE,
                1,
                WATER,
                advice("less-sweet"),
                mix -> Contributions.of(mix, "sweetness", Trait.SWEETNESS::of));
    }
}
