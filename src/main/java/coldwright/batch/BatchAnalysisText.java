package coldwright.batch;

import coldwright.science.Band;
import coldwright.science.crystal.CrystalStory;
import coldwright.science.diagnosis.Finding;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezer.Stage;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Mix;
import coldwright.science.sensory.Firmness;
import coldwright.science.standards.NameVerdict;
import coldwright.text.DisplayText;

import java.util.List;
import java.util.Locale;

/** A reckoning as a page of text, for people. */
public final class BatchAnalysisText {
    private static final int[] TEMPERATURES_C = {-2, -4, -6, -8, -10, -12, -15, -18, -20, -25};

    private final StringBuilder page = new StringBuilder();

    private BatchAnalysisText() {}

    /**
     * The page of a reckoning.
     *
     * @param batchAnalysis what was reckoned
     * @return lines of text
     */
    public static String of(BatchAnalysis batchAnalysis) {
        BatchAnalysisText text = new BatchAnalysisText();
        text.write(batchAnalysis);
        return text.page.toString();
    }

    /**
     * What is in a mix, as lines.
     *
     * @param mix any mix
     * @return amounts, then shares
     */
    public static String of(Mix mix) {
        BatchAnalysisText text = new BatchAnalysisText();
        text.amounts(mix);
        return text.page.toString();
    }

    private void write(BatchAnalysis batchAnalysis) {
        Mix mix = batchAnalysis.mix();
        line("%s, %.0f g", batchAnalysis.batch().name(), mix.massG());
        heading("What is in it");
        amounts(mix);
        heading("Freezing");
        line("begins to freeze at    %6.2f °C", batchAnalysis.curve().initialFreezingPointC());
        line("by the trade's method  %6.2f °C", batchAnalysis.trade().initialFreezingPointC());
        line("  %s", batchAnalysis.trade().why());
        line("temperature  ice, %% of the water");
        for (int celsius : TEMPERATURES_C) {
            line(
                    "%8d °C  %5.0f   %s",
                    celsius,
                    batchAnalysis.curve().icePercentAt(celsius),
                    Firmness.of(mix, celsius).words());
        }
        heading("Time");
        plan(batchAnalysis.plan());
        heading("Ice crystals, mean size with its band");
        crystals(batchAnalysis);
        heading("Taste and air");
        Band sweet = batchAnalysis.sweetness().percentOfSucroseSolution();
        line(
                "as sweet as a %.0f %% sugar solution (%.0f to %.0f by source)",
                sweet.middle(), sweet.low(), sweet.high());
        line(
                "%.2f L of mix at %.3f kg/L; %.2f L with %.0f %% overrun",
                mix.volumeL(),
                mix.densityKgPerL(),
                batchAnalysis.air().litres(mix),
                batchAnalysis.air().percent());
        heading("What to expect");
        if (batchAnalysis.findings().isEmpty()) {
            line("nothing that the figures give reason to fear");
        }
        for (Finding finding : batchAnalysis.findings()) {
            line("- %s", finding.what());
            line("  why:  %s", finding.why());
            line("  mend: %s", finding.mend());
        }
        heading("Names and declarations");
        names(batchAnalysis.names());
        batchAnalysis.declarations().forEach(this::bullet);
        list("Taken for granted, and where the models end", batchAnalysis.notes());
    }

    private void amounts(Mix mix) {
        for (Amount amount : mix.amounts()) {
            line("%10.1f g  %s", amount.massG(), amount.ingredient().name());
        }
        line(
                "water %.1f %%, fat %.1f %%, milk solids not fat %.1f %%, sugars %.1f %%, protein %.1f %%,",
                mix.waterPercent(),
                mix.fatPercent(),
                mix.milkSolidsNotFatPercent(),
                mix.sugarsPercent(),
                mix.proteinPercent());
        line(
                "alcohol %.1f %%, salt %.2f %%, total solids %.1f %%; %.0f g of sugars to 100 g of water",
                mix.alcoholPercent(),
                mix.saltPercent(),
                mix.totalSolidsPercent(),
                mix.sugarPer100gWater());
    }

    private void plan(FreezePlan plan) {
        line("%s", plan.freeze().cold().words());
        for (Stage stage : Stage.values()) {
            line("%-18s %s", stage.words(), time(plan, stage));
        }
        plan.remarks().forEach(this::bullet);
    }

    private static String time(FreezePlan plan, Stage stage) {
        FreezePlan.MinuteRange range = plan.rangeMinutes(stage);
        String likely = DisplayText.minutes(plan.minutesTo(stage));
        return Double.isFinite(range.least())
                ? "%s (%s to %s)"
                        .formatted(
                                likely,
                                DisplayText.minutes(range.least()),
                                DisplayText.minutes(range.most()))
                : likely;
    }

    private void crystals(BatchAnalysis batchAnalysis) {
        if (batchAnalysis.crystals().isEmpty()) {
            line("it keeps too little ice to have crystals");
            return;
        }
        CrystalsInStorage crystalsInStorage = batchAnalysis.crystals().get();
        crystal("drawn", crystalsInStorage.drawn());
        crystal("after one night", crystalsInStorage.night());
        crystal("after two weeks, swinging by 1 °C", crystalsInStorage.fortnight());
        crystalsInStorage.kept().ifPresent(kept -> crystal("as kept", kept));
        crystalsInStorage
                .steady()
                .ifPresent(steady -> crystal("had the freezer been steady", steady));
        batchAnalysis
                .batch()
                .stored()
                .ifPresent(storageConditions -> line("as kept: %s", storageConditions.words()));
    }

    private void crystal(String when, CrystalStory story) {
        line("%-34s %s", when, story.verdict());
    }

    /** What it may be called; the rules that it misses only where no name is left. */
    private void names(List<NameVerdict> names) {
        boolean none = names.stream().noneMatch(NameVerdict::allowed);
        names.stream()
                .filter(name -> none || name.allowed())
                .map(NameVerdict::sentence)
                .forEach(this::bullet);
    }

    private void list(String title, List<String> sentences) {
        if (!sentences.isEmpty()) {
            heading(title);
            sentences.forEach(this::bullet);
        }
    }

    private void bullet(String sentence) {
        line("- %s", sentence);
    }

    private void heading(String title) {
        page.append(System.lineSeparator());
        line("%s", title);
    }

    private void line(String format, Object... values) {
        page.append(String.format(Locale.ROOT, format, values)).append(System.lineSeparator());
    }
}
