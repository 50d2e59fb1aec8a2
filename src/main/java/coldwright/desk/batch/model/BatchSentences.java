package coldwright.desk.batch.model;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchReport;
import coldwright.batch.CrystalsInStorage;
import coldwright.batch.Fact;
import coldwright.batch.Recipe;
import coldwright.desk.messages.Messages;
import coldwright.science.Band;
import coldwright.science.diagnosis.Finding;
import coldwright.science.diagnosis.Situation;
import coldwright.science.freezer.Stage;
import coldwright.science.mix.Allergen;
import coldwright.text.DisplayText;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Facts about a batch for the page, in the words of the report. */
public final class BatchSentences {
    private BatchSentences() {}

    /** The first things a cook asks, as short sentences, with ranges where the sources differ. */
    public static List<String> facts(BatchPreview now) {
        double freezerC = now.batch().freezerC();
        List<Fact> facts = new ArrayList<>();
        facts.add(BatchReport.starts(now.curve()));
        facts.add(BatchReport.ice(now.mix(), Situation.SERVING_C));
        facts.add(BatchReport.ice(now.mix(), freezerC));
        BatchReport.spoon(now.mix(), freezerC).ifPresent(facts::add);
        facts.add(BatchReport.sweetness(now.sweetness()));
        return facts.stream().map(Fact::sentence).toList();
    }

    /**
     * The freeze plan in words: a sentence for each stage, then the plan's comments.
     *
     * @param all the batch's analysis
     */
    public static List<String> plan(BatchAnalysis all) {
        return Stream.concat(
                        Arrays.stream(Stage.values())
                                .map(stage -> BatchReport.minutes(all.plan(), stage).sentence()),
                        all.plan().comments().stream()
                                .map(one -> DisplayText.sentence(one.shown())))
                .toList();
    }

    /**
     * The crystals in a sentence with ranges.
     *
     * @param all the batch's analysis
     */
    public static String crystals(BatchAnalysis all) {
        if (all.crystals().isEmpty()) {
            return BatchReport.verdict(all).sentence();
        }
        BatchReport report = BatchReport.of(all);
        List<String> said = new ArrayList<>();
        if (all.batch().stored().isPresent() && all.crystals().get().kept().isEmpty()) {
            said.add(Messages.of("batch.crystals.melted"));
        }
        for (Fact fact : report.facts("crystals")) {
            if (fact.key().matches("(as_kept|kept_steady)_mean.*")) {
                said.add(fact.sentence());
            }
        }
        String usual =
                report.facts("crystals").stream()
                        .filter(fact -> fact.key().matches("(drawn|after_.*)_mean.*"))
                        .map(Fact::sentence)
                        .collect(Collectors.joining(", "));
        said.add(Messages.of("batch.crystals", usual));
        return String.join(" ", said);
    }

    /** When its crystals are tasted: after one night, or after its recipe's storage time. */
    public static String when(BatchAnalysis all) {
        return when(all.crystals().flatMap(CrystalsInStorage::kept).isPresent());
    }

    /** When a recipe's crystals are tasted. */
    public static String when(Recipe recipe) {
        return when(recipe.stored().isPresent());
    }

    private static String when(boolean kept) {
        return Messages.of(kept ? "batch.when.kept" : "batch.when.night");
    }

    /** Crystal size with its range. */
    public static String size(Band um) {
        return BatchReport.size(um).shown();
    }

    /**
     * A preview for comparison: a sentence each on freezing point, ice at serving and sweetness.
     */
    public static List<String> beside(BatchPreview now) {
        return List.of(
                BatchReport.starts(now.curve()).sentence(),
                BatchReport.ice(now.mix(), Situation.SERVING_C).sentence(),
                BatchReport.sweetness(now.sweetness()).sentence());
    }

    /**
     * An analysis for comparison: a sentence each on minutes and crystals.
     *
     * @param all the batch's analysis
     */
    public static List<String> beside(BatchAnalysis all) {
        return List.of(
                DisplayText.sentence(BatchReport.minutes(all.plan(), Stage.SOFT_SERVE).sentence()),
                BatchReport.verdict(all).sentence());
    }

    /** A finding in sentences: what to expect, why, and its fix. */
    public static List<String> finding(Finding finding) {
        return Stream.of(finding.expected(), finding.cause().reason(), finding.cause().remedy())
                .map(phrase -> DisplayText.sentence(phrase.shown()))
                .toList();
    }

    /**
     * Cautions in sentences, always with the one on allergens.
     *
     * @param all the batch's analysis
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
        all.declarations().forEach(one -> cautions.add(DisplayText.sentence(one.shown())));
        return cautions;
    }

    /** A time in minutes or hours, such as {@code 14 min}. */
    public static String minutes(double minutes) {
        return BatchReport.time(minutes).shown();
    }
}
