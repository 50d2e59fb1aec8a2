package coldwright.desk.batch.model;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.CrystalsInStorage;
import coldwright.batch.Recipe;
import coldwright.desk.messages.Messages;
import coldwright.science.Band;
import coldwright.science.diagnosis.Finding;
import coldwright.science.diagnosis.Situation;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezer.Stage;
import coldwright.science.mix.Allergen;
import coldwright.science.sensory.Firmness;
import coldwright.text.DisplayText;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A batch's figures in plain sentences. */
public final class BatchSentences {
    private static final double NOTABLE_PERCENT = 1;

    private BatchSentences() {}

    /**
     * The first things a cook asks.
     *
     * @param batchPreview the batch
     * @return short sentences, ranges where the sources differ
     */
    public static List<String> facts(BatchPreview batchPreview) {
        List<String> facts = new ArrayList<>();
        facts.add(
                Messages.of(
                        "batch.fact.starts",
                        DisplayText.decimals(1, batchPreview.curve().initialFreezingPointC())));
        for (double temperatureC :
                new double[] {Situation.SERVING_C, batchPreview.batch().freezerC()}) {
            facts.add(
                    Messages.of(
                            "batch.fact.ice",
                            DisplayText.decimals(0, temperatureC),
                            DisplayText.decimals(
                                    0, batchPreview.curve().icePercentAt(temperatureC)),
                            Firmness.of(batchPreview.mix(), temperatureC).words()));
        }
        spoon(batchPreview).ifPresent(facts::add);
        Band sweet = batchPreview.sweetness().percentOfSucroseSolution();
        String low = DisplayText.decimals(0, sweet.low());
        String high = DisplayText.decimals(0, sweet.high());
        facts.add(
                low.equals(high)
                        ? Messages.of("batch.fact.sweet-alike", low)
                        : Messages.of(
                                "batch.fact.sweet",
                                DisplayText.decimals(0, sweet.middle()),
                                low,
                                high));
        return facts;
    }

    /** Why less ice than its water's share may tell firm from soft. */
    private static Optional<String> spoon(BatchPreview batchPreview) {
        double freezerC = batchPreview.batch().freezerC();
        double met = Firmness.spoonIcePercent(batchPreview.mix(), freezerC);
        return batchPreview.curve().icePercentAt(freezerC) - met < NOTABLE_PERCENT
                ? Optional.empty()
                : Optional.of(
                        Messages.of(
                                "batch.fact.spoon",
                                DisplayText.decimals(0, batchPreview.mix().waterPercent()),
                                DisplayText.decimals(0, freezerC),
                                DisplayText.decimals(0, met)));
    }

    /**
     * The freeze plan in words.
     *
     * @param all the reckoning
     * @return one sentence for each stage, then what the plan remarks
     */
    public static List<String> plan(BatchAnalysis all) {
        FreezePlan plan = all.plan();
        List<String> words = new ArrayList<>();
        for (Stage stage : Stage.values()) {
            FreezePlan.MinuteRange range = plan.rangeMinutes(stage);
            words.add(
                    plan.reaches(stage)
                            ? Messages.of(
                                    "batch.plan.stage",
                                    stage.words(),
                                    minutes(plan.minutesTo(stage)),
                                    minutes(range.least()),
                                    minutes(range.most()))
                            : Messages.of("batch.plan.never", stage.words()));
        }
        words.addAll(plan.remarks().stream().map(DisplayText::sentence).toList());
        return words;
    }

    /**
     * The crystals in words.
     *
     * @param all the reckoning
     * @return a sentence with ranges
     */
    public static String crystals(BatchAnalysis all) {
        if (all.crystals().isEmpty()) {
            return Messages.of("batch.crystals.none");
        }
        CrystalsInStorage crystalsInStorage = all.crystals().get();
        String usual =
                Messages.of(
                        "batch.crystals",
                        size(crystalsInStorage.drawn().meanUm()),
                        size(crystalsInStorage.night().meanUm()),
                        size(crystalsInStorage.fortnight().meanUm()));
        String kept =
                crystalsInStorage
                        .kept()
                        .map(one -> Messages.of("batch.crystals.kept", size(one.meanUm())))
                        .orElse(
                                all.batch().stored().isPresent()
                                        ? Messages.of("batch.crystals.melted")
                                        : "");
        String steady =
                crystalsInStorage
                        .steady()
                        .map(one -> Messages.of("batch.crystals.steady", size(one.meanUm())))
                        .orElse("");
        return Stream.of(kept, steady, usual)
                .filter(one -> !one.isEmpty())
                .collect(Collectors.joining(" "));
    }

    /** When its crystals are tasted: after one night, or kept as is said of it. */
    public static String when(BatchAnalysis all) {
        return when(all.crystals().flatMap(CrystalsInStorage::kept).isPresent());
    }

    /** The same of a recipe. */
    public static String when(Recipe recipe) {
        return when(recipe.stored().isPresent());
    }

    private static String when(boolean kept) {
        return Messages.of(kept ? "batch.when.kept" : "batch.when.night");
    }

    /** The size of crystals with its range. */
    public static String size(Band um) {
        return Messages.of(
                "batch.crystals.size",
                DisplayText.decimals(0, um.middle()),
                DisplayText.decimals(0, um.low()),
                DisplayText.decimals(0, um.high()));
    }

    /**
     * A batch among others, at a glance.
     *
     * @param batchPreview the batch
     * @return a sentence each on where it freezes, its ice when served, its sweetness
     */
    public static List<String> beside(BatchPreview batchPreview) {
        double ice = batchPreview.curve().icePercentAt(Situation.SERVING_C);
        double sweet = batchPreview.sweetness().percentOfSucroseSolution().middle();
        return List.of(
                Messages.of(
                        "batch.beside.starts",
                        DisplayText.decimals(1, batchPreview.curve().initialFreezingPointC())),
                Messages.of(
                        "batch.beside.serving",
                        DisplayText.decimals(0, ice),
                        Firmness.of(batchPreview.mix(), Situation.SERVING_C).words()),
                Messages.of("batch.beside.sweet", DisplayText.decimals(0, sweet)));
    }

    /**
     * A batch among others, in full.
     *
     * @param all its reckoning
     * @return a sentence each on its minutes and its crystals
     */
    public static List<String> beside(BatchAnalysis all) {
        FreezePlan.MinuteRange range = all.plan().rangeMinutes(Stage.SOFT_SERVE);
        String minutes =
                Messages.of(
                        "batch.beside.minutes",
                        minutes(all.plan().minutesToSoftServe()),
                        minutes(range.least()),
                        minutes(range.most()));
        return List.of(
                all.plan().reaches(Stage.SOFT_SERVE) ? minutes : Messages.of("batch.clock.never"),
                all.crystals()
                        .map(
                                one ->
                                        Messages.of(
                                                "batch.beside.crystals",
                                                size(one.tasted().meanUm()),
                                                when(all)))
                        .orElse(Messages.of("batch.crystals.none")));
    }

    /**
     * A finding as two sentences.
     *
     * @param finding what to expect
     * @return what, why, and what mends it
     */
    public static List<String> finding(Finding finding) {
        return List.of(
                DisplayText.sentence(finding.what()),
                DisplayText.sentence(finding.why()),
                DisplayText.sentence(finding.mend()));
    }

    /**
     * What may hurt.
     *
     * @param all the reckoning
     * @return sentences; always the one on allergens
     */
    public static List<String> cautions(BatchAnalysis all) {
        List<String> cautions = new ArrayList<>();
        if (all.mix().allergens().contains(Allergen.EGG)) {
            cautions.add(Messages.of("batch.caution.egg"));
        }
        if (all.mix().alcoholPercent() > 0) {
            cautions.add(Messages.of("batch.caution.alcohol"));
        }
        switch (all.batch().method()) {
            case BAG, CHURN -> cautions.add(Messages.of("batch.caution.brine"));
            case TUB, SHAKEN -> cautions.add(Messages.of("batch.caution.tub"));
        }
        all.declarations().forEach(one -> cautions.add(DisplayText.sentence(one)));
        return cautions;
    }

    /**
     * Minutes or hours.
     *
     * @param minutes how many
     * @return such as {@code 14 min}
     */
    public static String minutes(double minutes) {
        return DisplayText.minutes(minutes, Messages.of("batch.never"));
    }
}
