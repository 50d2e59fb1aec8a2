package coldwright.desk.brew.model;

import coldwright.batch.Keeping;
import coldwright.batch.Reckoning;
import coldwright.desk.say.Say;
import coldwright.science.Band;
import coldwright.science.diagnosis.Finding;
import coldwright.science.diagnosis.Situation;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezer.Stage;
import coldwright.science.mix.Allergen;
import coldwright.science.sensory.Firmness;
import coldwright.text.Written;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A batch's figures in plain sentences. */
public final class Told {
    private static final double TELLING_PERCENT = 1;

    private Told() {}

    /**
     * The first things a cook asks.
     *
     * @param glance the batch
     * @return short sentences, ranges where the sources differ
     */
    public static List<String> facts(Glance glance) {
        List<String> facts = new ArrayList<>();
        facts.add(
                Say.of(
                        "batch.fact.starts",
                        Written.decimals(1, glance.curve().initialFreezingPointC())));
        for (double temperatureC : new double[] {Situation.SERVING_C, glance.batch().freezerC()}) {
            facts.add(
                    Say.of(
                            "batch.fact.ice",
                            Written.decimals(0, temperatureC),
                            Written.decimals(0, glance.curve().icePercentAt(temperatureC)),
                            Firmness.of(glance.mix(), temperatureC).words()));
        }
        spoon(glance).ifPresent(facts::add);
        Band sweet = glance.sweetness().percentOfSucroseSolution();
        String low = Written.decimals(0, sweet.low());
        String high = Written.decimals(0, sweet.high());
        facts.add(
                low.equals(high)
                        ? Say.of("batch.fact.sweet-alike", low)
                        : Say.of(
                                "batch.fact.sweet",
                                Written.decimals(0, sweet.middle()),
                                low,
                                high));
        return facts;
    }

    /** Why less ice than its water's share may tell firm from soft. */
    private static Optional<String> spoon(Glance glance) {
        double freezerC = glance.batch().freezerC();
        double met = Firmness.spoonIcePercent(glance.mix(), freezerC);
        return glance.curve().icePercentAt(freezerC) - met < TELLING_PERCENT
                ? Optional.empty()
                : Optional.of(
                        Say.of(
                                "batch.fact.spoon",
                                Written.decimals(0, glance.mix().waterPercent()),
                                Written.decimals(0, freezerC),
                                Written.decimals(0, met)));
    }

    /**
     * The freeze plan in words.
     *
     * @param all the reckoning
     * @return one sentence for each stage, then what the plan remarks
     */
    public static List<String> plan(Reckoning all) {
        FreezePlan plan = all.plan();
        List<String> words = new ArrayList<>();
        for (Stage stage : Stage.values()) {
            FreezePlan.Between range = plan.rangeMinutes(stage);
            words.add(
                    plan.reaches(stage)
                            ? Say.of(
                                    "batch.plan.stage",
                                    stage.words(),
                                    minutes(plan.minutesTo(stage)),
                                    minutes(range.least()),
                                    minutes(range.most()))
                            : Say.of("batch.plan.never", stage.words()));
        }
        words.addAll(plan.remarks().stream().map(Written::sentence).toList());
        return words;
    }

    /**
     * The crystals in words.
     *
     * @param all the reckoning
     * @return a sentence with ranges
     */
    public static String crystals(Reckoning all) {
        if (all.keeping().isEmpty()) {
            return Say.of("batch.crystals.none");
        }
        Keeping keeping = all.keeping().get();
        String usual =
                Say.of(
                        "batch.crystals",
                        size(keeping.drawn().meanUm()),
                        size(keeping.night().meanUm()),
                        size(keeping.fortnight().meanUm()));
        String kept =
                keeping.kept()
                        .map(one -> Say.of("batch.crystals.kept", size(one.meanUm())))
                        .orElse(
                                all.batch().stored().isPresent()
                                        ? Say.of("batch.crystals.melted")
                                        : "");
        String steady =
                keeping.steady()
                        .map(one -> Say.of("batch.crystals.steady", size(one.meanUm())))
                        .orElse("");
        return Stream.of(kept, steady, usual)
                .filter(one -> !one.isEmpty())
                .collect(Collectors.joining(" "));
    }

    /** When its crystals are tasted: after one night, or kept as is said of it. */
    static String when(Reckoning all) {
        return when(all.keeping().flatMap(Keeping::kept).isPresent());
    }

    /** The same of a recipe. */
    static String when(Recipe recipe) {
        return when(recipe.means().store().said());
    }

    private static String when(boolean kept) {
        return Say.of(kept ? "batch.when.kept" : "batch.when.night");
    }

    /** The size of crystals with its range. */
    static String size(Band um) {
        return Say.of(
                "batch.crystals.size",
                Written.decimals(0, um.middle()),
                Written.decimals(0, um.low()),
                Written.decimals(0, um.high()));
    }

    /**
     * A batch among others, at a glance.
     *
     * @param glance the batch
     * @return a sentence each on where it freezes, its ice when served, its sweetness
     */
    public static List<String> beside(Glance glance) {
        double ice = glance.curve().icePercentAt(Situation.SERVING_C);
        double sweet = glance.sweetness().percentOfSucroseSolution().middle();
        return List.of(
                Say.of(
                        "batch.beside.starts",
                        Written.decimals(1, glance.curve().initialFreezingPointC())),
                Say.of(
                        "batch.beside.serving",
                        Written.decimals(0, ice),
                        Firmness.of(glance.mix(), Situation.SERVING_C).words()),
                Say.of("batch.beside.sweet", Written.decimals(0, sweet)));
    }

    /**
     * A batch among others, in full.
     *
     * @param all its reckoning
     * @return a sentence each on its minutes and its crystals
     */
    public static List<String> beside(Reckoning all) {
        FreezePlan.Between range = all.plan().rangeMinutes(Stage.SOFT_SERVE);
        String minutes =
                Say.of(
                        "batch.beside.minutes",
                        minutes(all.plan().minutesToSoftServe()),
                        minutes(range.least()),
                        minutes(range.most()));
        return List.of(
                all.plan().reaches(Stage.SOFT_SERVE) ? minutes : Say.of("batch.clock.never"),
                all.keeping()
                        .map(
                                one ->
                                        Say.of(
                                                "batch.beside.crystals",
                                                size(one.tasted().meanUm()),
                                                when(all)))
                        .orElse(Say.of("batch.crystals.none")));
    }

    /**
     * A finding as two sentences.
     *
     * @param finding what to expect
     * @return what, why, and what mends it
     */
    public static List<String> finding(Finding finding) {
        return List.of(
                Written.sentence(finding.what()),
                Written.sentence(finding.why()),
                Written.sentence(finding.mend()));
    }

    /**
     * What may hurt.
     *
     * @param all the reckoning
     * @return sentences; always the one on allergens
     */
    public static List<String> cautions(Reckoning all) {
        List<String> cautions = new ArrayList<>();
        if (all.mix().allergens().contains(Allergen.EGG)) {
            cautions.add(Say.of("batch.caution.egg"));
        }
        if (all.mix().alcoholPercent() > 0) {
            cautions.add(Say.of("batch.caution.alcohol"));
        }
        switch (all.batch().method()) {
            case BAG, CHURN -> cautions.add(Say.of("batch.caution.brine"));
            case TUB, SHAKEN -> cautions.add(Say.of("batch.caution.tub"));
        }
        all.declarations().forEach(one -> cautions.add(Written.sentence(one)));
        return cautions;
    }

    /**
     * Minutes or hours.
     *
     * @param minutes how many
     * @return such as {@code 14 min}
     */
    public static String minutes(double minutes) {
        if (!Double.isFinite(minutes)) {
            return Say.of("batch.never");
        }
        return Written.minutes(minutes);
    }
}
