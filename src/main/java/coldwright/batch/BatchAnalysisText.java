package coldwright.batch;

import coldwright.science.balance.Balanced;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.plan.Finding;
import coldwright.science.plan.Plan;
import coldwright.science.plan.PlanSentences;
import coldwright.science.plan.ScaleRounding;
import coldwright.science.sensory.Firmness;
import coldwright.science.standards.NameVerdict;
import coldwright.text.DisplayText;
import coldwright.words.Phrase;
import coldwright.words.Words;

import java.util.List;
import java.util.stream.Collectors;

/** An analysis or a balance as a page of text, for people. */
public final class BatchAnalysisText {
    private static final int[] TEMPERATURES_C = {-2, -4, -6, -8, -10, -12, -15, -18, -20, -25};
    private static final List<String> SHARES =
            List.of(
                    "water_percent",
                    "fat_percent",
                    "milk_solids_not_fat_percent",
                    "sugars_percent",
                    "protein_percent",
                    "alcohol_percent",
                    "salt_percent",
                    "total_solids_percent",
                    "sugars_g_per_100_g_water");

    private static final Words WORDS = Words.of("batch");

    private final StringBuilder page = new StringBuilder();

    private BatchAnalysisText() {}

    /** Lines of text for an analysis. */
    public static String of(BatchAnalysis all) {
        BatchAnalysisText text = new BatchAnalysisText();
        text.write(all, all.report());
        return text.page.toString();
    }

    /** Lines of text for the sources of an analysis. */
    public static String sources(BatchAnalysis all) {
        BatchAnalysisText text = new BatchAnalysisText();
        text.heading("sources");
        all.report().sources().forEach(one -> text.bullet(one.shown()));
        all.report().names(all.state().style()).forEach(name -> text.bullet(name.phrase().shown()));
        return text.page.toString();
    }

    /** Lines of text for a balance: amounts, shares, and targets that can't be met. */
    public static String of(Balanced found) {
        BatchAnalysisText text = new BatchAnalysisText();
        Mix mix = found.mix();
        Recipe plain = Recipe.of("", FreezingSetup.TUB, List.of());
        boolean wet = mix.waterPercent() > 0;
        BatchReport report =
                new BatchReport(
                        wet
                                ? ReportFacts.quick(plain, mix, mix.freezingCurve())
                                : ReportFacts.composition(mix));
        text.amounts(mix, report);
        report.sentences(
                        "initial_freezing_point_c",
                        "ice_percent_of_water_at_minus_12_c",
                        "sweetness_percent_of_sucrose_solution",
                        BatchReport.PAC)
                .forEach(text::say);
        text.heading(found.met() ? "met" : "not-met");
        found.shortfalls().forEach(one -> text.bullet(one.phrase().shown()));
        if (!found.met() && !found.atLimit().isEmpty()) {
            text.say(word("at-limit", found.atLimit().stream().map(Ingredient::phrase).toList()));
        }
        return text.page.toString();
    }

    private void write(BatchAnalysis all, BatchReport report) {
        line("%s, %.0f g", all.batch().name(), report.fact("mass_g").number());
        heading("inside");
        amounts(all.mix(), report);
        heading("freezing");
        say(report.fact("initial_freezing_point_c").as("page"));
        say(report.fact("trade_method_initial_freezing_point_c").sentence());
        say("  " + report.fact("trade_method_difference").sentence());
        say(report.fact(BatchReport.PAC).sentence());
        say("  " + report.fact(BatchReport.PAC).as("why"));
        say(word("ice-table"));
        for (int celsius : TEMPERATURES_C) {
            line(
                    "%8s °C  %5.0f   %s",
                    Words.decimals(0, celsius),
                    all.curve().icePercentAt(celsius),
                    Firmness.of(all.mix(), celsius).phrase().shown());
        }
        heading("time");
        say(report.fact("by").sentence());
        report.facts("freeze_plan").stream()
                .filter(fact -> fact.key().startsWith("minutes_to_"))
                .forEach(fact -> say(fact.sentence()));
        all.plan().comments().forEach(one -> bullet(one.shown()));
        heading("crystals");
        crystals(all, report);
        heading("taste");
        report.sentences("sweetness_percent_of_sucrose_solution", "volume_with_air_l")
                .forEach(this::say);
        heading("expect");
        all.judged().forEach(one -> say(DisplayText.sentence(one.shown())));
        if (report.findings().isEmpty()) {
            say(BatchReport.NO_FINDINGS.shown());
        }
        for (Finding finding : report.findings()) {
            bullet(finding.expected().shown());
            say("  " + word("why", Basis.labelled(finding.reason())));
            say("  " + word("fix", finding.remedy()));
            say("  " + word("lesson", finding.fault().lesson()));
        }
        all.plans().forEach(this::plan);
        heading("names");
        names(report.claimed(all.state().style()));
        report.declarations().forEach(one -> bullet(one.shown()));
        if (!report.notes().isEmpty()) {
            heading("notes");
            report.notes().forEach(one -> bullet(one.shown()));
        }
    }

    private void plan(Plan plan) {
        String steps = joined(PlanSentences.steps(plan));
        if (!steps.isEmpty()) {
            say(word("plan", plan.character().phrase(), steps));
            say("  " + word("effects", joined(PlanSentences.effects(plan))));
        }
        PlanSentences.left(plan).forEach(one -> say("  " + one.shown()));
    }

    private static String joined(List<Phrase> phrases) {
        return phrases.stream().map(Phrase::shown).collect(Collectors.joining("; "));
    }

    private void amounts(Mix mix, BatchReport report) {
        for (Amount amount : mix.amounts()) {
            double g = ScaleRounding.roundedG(amount.massG());
            line(
                    g < 100 ? "%10.1f g  %s" : "%8.0f   g  %s",
                    g,
                    amount.ingredient().phrase().shown());
        }
        say(
                SHARES.stream()
                        .map(key -> report.fact(key).sentence())
                        .collect(Collectors.joining(", ")));
    }

    private void crystals(BatchAnalysis all, BatchReport report) {
        if (all.crystals().isEmpty()) {
            say(report.fact("verdict").sentence());
            return;
        }
        report.facts("crystals").stream()
                .filter(fact -> fact.band().isPresent() && !fact.key().startsWith("tasted"))
                .forEach(fact -> say(fact.as("page")));
        all.batch().stored().ifPresent(stored -> say(word("stored", stored.phrase())));
    }

    /** One line on the names that its style claims; what each lacks is among the sources. */
    private void names(List<NameVerdict> claimed) {
        if (!claimed.isEmpty()) {
            boolean any = claimed.get(0).allowed();
            bullet(
                    word(
                            any ? "may" : "may-not",
                            claimed.stream().map(NameVerdict::nameAndPlace).toList()));
        }
    }

    private void bullet(String sentence) {
        say("- " + sentence);
    }

    private void heading(String key) {
        say("");
        say(word(key));
    }

    private static String word(String key, Object... values) {
        return WORDS.shown("page." + key, values);
    }

    private void line(String format, Object... values) {
        say(String.format(Words.shown(), format, values));
    }

    private void say(String line) {
        page.append(line).append(System.lineSeparator());
    }
}
