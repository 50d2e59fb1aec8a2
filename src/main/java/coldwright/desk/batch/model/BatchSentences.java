package coldwright.desk.batch.model;

import coldwright.batch.Basis;
import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchReport;
import coldwright.batch.Fact;
import coldwright.desk.messages.Messages;
import coldwright.print.MakeCautions;
import coldwright.science.plan.Finding;
import coldwright.text.DisplayText;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Selects the facts of a report that the page shows, as sentences and short captions. */
public final class BatchSentences {
    private static final String STARTS = "initial_freezing_point_c";
    private static final String SERVED = "serving_ice_percent_of_water";
    private static final String SWEET = "sweetness_percent_of_sucrose_solution";
    private static final String KEPT = "as_kept_mean_micrometres";

    private BatchSentences() {}

    /** The first things a cook asks, as short sentences, with ranges where the sources differ. */
    public static List<String> facts(BatchReport report) {
        List<String> facts =
                report.sentences(
                        STARTS, SERVED, "freezer_ice_percent_of_water", "spoon_ice_percent", SWEET);
        return Stream.concat(
                        facts.stream().distinct(),
                        Stream.of(
                                report.fact(BatchReport.PAC).sentence()
                                        + " "
                                        + report.fact(BatchReport.PAC).as("why")))
                .toList();
    }

    /** A line for each source of a report. */
    public static List<String> sources(BatchReport report) {
        return report.sources().stream().map(BatchSentences::sentence).toList();
    }

    /** The freeze plan in words: a sentence for each stage, then the plan's comments. */
    public static List<String> plan(BatchAnalysis all) {
        return Stream.concat(
                        all.report().facts("freeze_plan").stream()
                                .filter(fact -> fact.key().startsWith("minutes_to_"))
                                .map(Fact::sentence),
                        all.plan().comments().stream().map(BatchSentences::sentence))
                .toList();
    }

    /** The crystals in a sentence with ranges. */
    public static String crystals(BatchReport report) {
        List<Fact> sizes =
                report.facts("crystals").stream().filter(fact -> fact.band().isPresent()).toList();
        if (sizes.isEmpty()) {
            return report.fact("verdict").sentence();
        }
        List<String> said = new ArrayList<>();
        if (report.find("days").isPresent() && report.find(KEPT).isEmpty()) {
            said.add(Messages.of("batch.crystals.melted"));
        }
        said.addAll(report.sentences(KEPT, "kept_steady_mean_micrometres"));
        said.add(
                Messages.of(
                        "batch.crystals",
                        sizes.stream()
                                .filter(fact -> fact.key().matches("(drawn|after_.*)_mean.*"))
                                .map(Fact::sentence)
                                .collect(Collectors.joining(", "))));
        return String.join(" ", said);
    }

    /**
     * A few sentences for comparison: freezing point, ice at serving, sweetness, time, crystals.
     */
    public static List<String> beside(BatchReport report) {
        return report.sentences(STARTS, SERVED, SWEET, "minutes_to_soft_serve", "verdict").stream()
                .map(DisplayText::sentence)
                .toList();
    }

    /** The style and the diet that a batch is judged by, and its pieces, in a sentence. */
    public static String judged(BatchAnalysis all) {
        return all.judged().stream().map(BatchSentences::sentence).collect(Collectors.joining(" "));
    }

    /** A finding in sentences: what to expect, why, and its fix. */
    public static List<String> finding(Finding finding) {
        return Stream.of(finding.expected(), Basis.labelled(finding.reason()), finding.remedy())
                .map(BatchSentences::sentence)
                .toList();
    }

    private static String sentence(Phrase phrase) {
        return DisplayText.sentence(phrase.shown());
    }

    /** The cautions of its make sheet, and what it declares, in sentences. */
    public static List<String> cautions(BatchAnalysis all) {
        return Stream.concat(
                        MakeCautions.of(all).stream().map(one -> one.replace("**", "")),
                        all.report().declarations().stream().map(BatchSentences::sentence))
                .toList();
    }

    /** A caption for a tile: name and share of a component. */
    public static String caption(BatchShare part) {
        String key = part.percent() < 1 ? "batch.tile.little" : "batch.tile.part";
        return Messages.of(key, part.name(), part.percent());
    }

    /** A caption for a tile: ice at serving. */
    public static String freezingCaption(BatchReport report) {
        return unbroken(report.fact(SERVED).as("tile"));
    }

    /**
     * A caption for a tile: time to the target stage with its range, or that it never gets there.
     */
    public static String clockCaption(BatchAnalysis all) {
        String stage = FreezeSchedule.aim(all).name().toLowerCase(Locale.ROOT);
        return unbroken(all.report().fact("minutes_to_" + stage).as("tile"));
    }

    /** A caption for a tile: crystal size with its range and time, or that there are none. */
    public static String crystalsCaption(BatchReport report) {
        return unbroken(report.fact("verdict").as("tile"));
    }

    /** Keeps each number on one line with its unit: tiles are narrow. */
    private static String unbroken(String caption) {
        return caption.replaceAll("(\\d) (%|°C|µm|min|h)(?!\\p{L})", "$1\u00a0$2");
    }
}
