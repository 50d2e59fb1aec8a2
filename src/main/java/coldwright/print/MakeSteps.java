package coldwright.print;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.CrystalsInStorage;
import coldwright.batch.Recipe.Method;
import coldwright.science.Band;
import coldwright.science.crystal.CrystalStory;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezer.Stage;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Component;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.sensory.Firmness;
import coldwright.science.standards.Cooling;
import coldwright.science.standards.Pasteurisation;
import coldwright.text.DisplayText;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The method of a batch, step by step. Freezing times and temperatures are calculated; the order of
 * mixing, the ten parts of sugar to a gum and the hours of ageing are common practice, no source.
 */
final class MakeSteps {
    /** First point of the rules' tables, 155 °F, and one that a kitchen can reach, 175 °F. */
    private static final double[] HEAT_C = {(155 - 32) / 1.8, (175 - 32) / 1.8};

    private static final double AGED_FROM_FAT_PERCENT = 3;

    private final BatchAnalysis all;
    private final Mix mix;
    private final List<Amount> amounts;
    private final FreezePlan plan;
    private final List<String> steps = new ArrayList<>();

    private MakeSteps(BatchAnalysis all) {
        this.all = all;
        this.mix = all.mix();
        this.amounts = used(mix);
        this.plan = all.plan();
    }

    /** The amounts above zero. */
    static List<Amount> used(Mix mix) {
        return mix.amounts().stream().filter(amount -> amount.massG() > 0).toList();
    }

    /** Whether the mix is heated: because of egg, milk, starch or gums. */
    static boolean isHeated(Mix mix) {
        List<Amount> amounts = used(mix);
        return IngredientHandling.any(amounts, IngredientHandling::isEgg)
                || IngredientHandling.any(amounts, IngredientHandling::isMilk)
                || IngredientHandling.any(amounts, IngredientHandling::isGum)
                || IngredientHandling.any(amounts, IngredientHandling::isRawMeal)
                || mix.composition().percent(Component.STARCH) > 1;
    }

    static List<String> of(BatchAnalysis all) {
        MakeSteps steps = new MakeSteps(all);
        steps.mix();
        steps.cool();
        steps.freeze();
        steps.keep();
        return steps.steps;
    }

    private void mix() {
        String gums = IngredientHandling.names(amounts, IngredientHandling::isGum);
        String sugar = IngredientHandling.names(amounts, IngredientHandling::isDrySugar);
        if (!gums.isEmpty()) {
            steps.add(
                    "**Dry first.** Stir %s %s: so no lumps form."
                            .formatted(
                                    gums,
                                    sugar.isEmpty()
                                            ? "in a thin stream into the cold liquid"
                                            : "into about ten times the weight of " + sugar));
        }
        String late = IngredientHandling.names(amounts, this::goesInLate);
        String besides = late.isEmpty() ? "all" : "all but " + late;
        String fruit = IngredientHandling.names(amounts, IngredientHandling::isWholeFruit);
        String blend = fruit.isEmpty() ? "" : " Wash and blend %s first.".formatted(fruit);
        if (!isHeated(mix)) {
            steps.add(
                    "**Mix.** Stir %s together until no grain of sugar is left.%s"
                            .formatted(besides, blend));
            return;
        }
        String egg = IngredientHandling.names(amounts, IngredientHandling::isEgg);
        String whisk =
                egg.isEmpty()
                        ? ""
                        : " Whisk %s with some of the sugar and pour the warm part on it, whisking."
                                .formatted(egg);
        String brown =
                IngredientHandling.namesBrownedSugar(all.batch().name()) && !sugar.isEmpty()
                        ? " If sugar is browned first, weigh the pot before and after, and make up with water what boiled away."
                        : "";
        steps.add("**Mix.** Put %s in a pot.%s%s%s".formatted(besides, blend, whisk, brown));
        boolean dairyOrEgg =
                !egg.isEmpty() || IngredientHandling.any(amounts, IngredientHandling::isMilk);
        Pasteurisation rule = egg.isEmpty() ? Pasteurisation.MIX : Pasteurisation.EGGNOG;
        steps.add(
                dairyOrEgg
                        ? "**Heat.** Stir all the time and pasteurise as your local food-safety rules say. One such rule, %s of the United States, lists %s for %s, or %s for %s, for every part. No pot proves that: measure, and leave the proof to licensed practice."
                                .formatted(
                                        rule.rule(),
                                        rule.holdAt(HEAT_C[0]).listedAt(),
                                        MakeSheetText.seconds(rule.holdAt(HEAT_C[0]).seconds()),
                                        rule.holdAt(HEAT_C[1]).listedAt(),
                                        MakeSheetText.seconds(rule.holdAt(HEAT_C[1]).seconds()))
                        : "**Heat.** Bring it just to the boil, stirring: starch and gums swell in the heat, and raw meal must be cooked.");
    }

    /** Whether it is added to the cold mix: it boils away, curdles hot milk or loses its scent. */
    private boolean goesInLate(Ingredient one) {
        return isHeated(mix)
                && (IngredientHandling.isStrong(one)
                        || IngredientHandling.isSour(one)
                                && IngredientHandling.any(amounts, IngredientHandling::isMilk));
    }

    private void cool() {
        String startC = MakeSheetText.celsius(0, plan.freeze().startC());
        boolean heated = isHeated(mix);
        String late = IngredientHandling.names(amounts, this::goesInLate);
        steps.add(
                (heated
                                ? "**Cool** fast, the pot in iced water, to %s or below. %s"
                                        .formatted(startC, DisplayText.sentence(Cooling.sentence()))
                                : "**Chill** to %s or below: the times here count from there."
                                        .formatted(startC))
                        + (late.isEmpty() ? "" : " Then stir in %s.".formatted(late)));
        boolean aged =
                heated
                        && (mix.fatPercent() > AGED_FROM_FAT_PERCENT
                                || IngredientHandling.any(amounts, IngredientHandling::isGum));
        if (aged) {
            steps.add(
                    "**Age** 4 hours or overnight at %s or below, covered: fat sets and gums swell (common practice)."
                            .formatted(startC));
        }
    }

    private void freeze() {
        String parts =
                all.parts() == 1 ? "" : "Part it into %d equal parts. ".formatted(all.parts());
        Method method = all.batch().method();
        String cold = MakeSheetText.celsius(0, all.coldC());
        switch (method) {
            case BAG ->
                    steps.add(
                            "**Freeze in the bag.** %sFill one strong bag, press the air out, close it, put it in a second one, flat, about 30 mm thick. Bury it in the ice and salt (%s at the start) and knead it through a towel without rest. %s"
                                    .formatted(parts, cold, done("knead")));
            case CHURN ->
                    steps.add(
                            "**Churn.** %sChill the can, fill it two thirds at most, pack ice and salt round it (%s at the start) and crank without rest. %s"
                                    .formatted(parts, cold, done("crank")));
            case TUB ->
                    steps.add(
                            "**Freeze in the tub.** %sFill a plastic tub nine tenths, lid on, and leave it in the freezer at %s. %s"
                                    .formatted(parts, cold, done("wait")));
            case SHAKEN ->
                    steps.add(
                            "**Freeze in the tub, shaking.** %sFill a plastic tub nine tenths, lid on, freezer at %s. %s%s"
                                    .formatted(parts, cold, shakes(), done("shake")));
        }
        if (method == Method.BAG || method == Method.CHURN) {
            steps.add(
                    "**Rinse the brine off** before you open it; then pack it cold and fast into a plastic tub. %s"
                            .formatted(hard()));
        } else if (plan.reaches(Stage.HARD)) {
            steps.add("**Harden.** " + hard());
        }
    }

    private String shakes() {
        List<Double> minutes = plan.shakeAtMinutes();
        return minutes.isEmpty()
                ? ""
                : "Shake or stir through after %s min. "
                        .formatted(
                                minutes.stream()
                                        .map(minute -> DisplayText.decimals(0, minute))
                                        .collect(Collectors.joining(", ")));
    }

    private String done(String deed) {
        if (!plan.reaches(Stage.SOFT_SERVE)) {
            return plan.remarks().isEmpty()
                    ? "It is not predicted to set with this method."
                    : DisplayText.sentence(plan.remarks().get(0));
        }
        String end = deed.equals("wait") ? "It is soft-serve" : "Done at soft-serve,";
        return "It thickens after about %s. %s after about %s (%s)%s."
                .formatted(
                        DisplayText.minutes(plan.minutesToThicken()),
                        end,
                        DisplayText.minutes(plan.minutesToSoftServe()),
                        range(Stage.SOFT_SERVE),
                        deed.equals("wait") ? "" : ", when it stands in soft heaps");
    }

    private String hard() {
        return plan.reaches(Stage.HARD)
                ? "Leave it at %s until it is hard: about %s after the start (%s)."
                        .formatted(
                                MakeSheetText.celsius(0, all.batch().freezerC()),
                                DisplayText.minutes(plan.minutesToHard()),
                                range(Stage.HARD))
                : "It is not predicted to get hard at %s: eat it soft."
                        .formatted(MakeSheetText.celsius(0, all.batch().freezerC()));
    }

    private String range(Stage stage) {
        FreezePlan.MinuteRange minuteRange = plan.rangeMinutes(stage);
        return DisplayText.minutes(minuteRange.least())
                + " to "
                + DisplayText.minutes(minuteRange.most());
    }

    private void keep() {
        double freezerC = all.batch().freezerC();
        String serve = "";
        try {
            Band scoops = Firmness.scoopableC(mix);
            serve =
                    scoops.high() < freezerC
                            ? "it stays softer than a scoop at %s, so serve it straight from there"
                                    .formatted(MakeSheetText.celsius(0, freezerC))
                            : scoops.low() <= freezerC
                                    ? "it can be scooped straight from the freezer"
                                    : "let it warm in the refrigerator to %s to %s, where it can be scooped"
                                            .formatted(
                                                    MakeSheetText.celsius(0, scoops.low()),
                                                    MakeSheetText.celsius(0, scoops.high()));
        } catch (IllegalArgumentException e) {
            serve = "it stays soft at any cold, so serve it as it is";
        }
        String crystals = all.crystals().map(this::crystals).orElse("");
        steps.add(
                "**Serve and store.** To serve, %s. Store at %s or colder, lid on; do not freeze again what has melted.%s"
                        .formatted(serve, MakeSheetText.celsius(0, freezerC), crystals));
    }

    private String crystals(CrystalsInStorage crystalsInStorage) {
        String usual =
                " Ice crystals: about %s after one night%s (from 50 µm on they are felt)."
                        .formatted(
                                size(crystalsInStorage.night()),
                                crystalsInStorage
                                        .fortnight()
                                        .map(one -> ", " + size(one) + " after two weeks")
                                        .orElse(""));
        String kept =
                crystalsInStorage
                        .kept()
                        .map(
                                one ->
                                        " Kept %s: %s%s."
                                                .formatted(
                                                        all.batch().stored().orElseThrow().words(),
                                                        size(one),
                                                        crystalsInStorage
                                                                .steady()
                                                                .map(MakeSteps::steady)
                                                                .orElse("")))
                        .orElse("");
        return usual + kept;
    }

    private static String steady(CrystalStory story) {
        return ", in a steady freezer " + size(story);
    }

    private static String size(CrystalStory story) {
        return DisplayText.decimals(0, story.meanUm().middle()) + " µm";
    }
}
