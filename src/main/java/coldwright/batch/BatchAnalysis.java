package coldwright.batch;

import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezer.Stage;
import coldwright.science.freezing.FreezingCurve;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Sweetener;
import coldwright.science.plan.BatchState;
import coldwright.science.plan.Faults;
import coldwright.science.plan.Plan;
import coldwright.science.plan.Planner;
import coldwright.science.standards.Declarations;
import coldwright.science.standards.ProductNames;
import coldwright.science.style.Pieces;
import coldwright.words.Phrase;
import coldwright.words.Worded;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The analysis of a batch before it is made.
 *
 * @param preview its mix and freezing curve
 * @param plan minutes to each stage, for one part
 * @param parts number of equal parts it is frozen in
 * @param coldC temperature that freezes it at the start, °C
 * @param crystals its ice crystals, if it freezes
 * @param state the batch as it is judged: style, diet, making and what freezing made of it
 * @param kitchen where its plans are frozen
 * @param report all results, to be shown
 */
public record BatchAnalysis(
        BatchPreview preview,
        FreezePlan plan,
        int parts,
        double coldC,
        Optional<CrystalsInStorage> crystals,
        BatchState state,
        BatchKitchen kitchen,
        BatchReport report) {
    private static final Phrase MELTED = Phrase.of("batch", "assumed.melted");

    /**
     * Analyses the recipe of a file.
     *
     * @throws IllegalArgumentException if it can't be analysed; names file and line
     */
    public static BatchAnalysis of(RecipeFile file) {
        return file.ask(RecipeFile.Prevents.ANALYSIS, BatchAnalysis::of);
    }

    /**
     * Analyses a recipe.
     *
     * @throws IllegalArgumentException if it can't be analysed, such as without water
     */
    public static BatchAnalysis of(Recipe batch) {
        return of(BatchPreview.of(batch));
    }

    /**
     * Completes a preview.
     *
     * @throws IllegalArgumentException if it can't be analysed
     */
    public static BatchAnalysis of(BatchPreview preview) {
        Recipe batch = preview.batch();
        Mix mix = preview.mix();
        FreezeMethodSetup setup = FreezeMethodSetup.of(batch, mix);
        FreezePlan plan = setup.plan();
        Optional<CrystalsInStorage> crystals =
                plan.reaches(Stage.SOFT_SERVE)
                        ? CrystalsInStorage.of(batch, mix, setup).map(CrystalsInStorage::calculated)
                        : Optional.empty();
        BatchKitchen kitchen = new BatchKitchen(batch);
        BatchState state = kitchen.state(mix, kitchen.frozen(setup, crystals));
        List<Fact> facts = new ArrayList<>(preview.report().facts());
        facts.addAll(
                new ReportFacts()
                        .plan(plan, setup.vessels(), setup.coldC())
                        .stored(batch.stored())
                        .crystals(crystals, state.style().eaten())
                        .all());
        List<Phrase> notes = new ArrayList<>(setup.assumed());
        batch.lines().forEach(line -> Dextrose.note(line.name()).ifPresent(notes::add));
        notes.addAll(Sweetener.laxationNotes(mix));
        List<Phrase> said = plan.comments();
        preview.curve().comments().stream()
                .filter(note -> !said.contains(note))
                .forEach(notes::add);
        crystals.ifPresent(one -> notes.addAll(one.tasted().comments()));
        if (batch.stored().isPresent()
                && crystals.filter(one -> one.kept().isEmpty()).isPresent()) {
            notes.add(MELTED);
        }
        BatchReport report =
                new BatchReport(
                        facts,
                        Faults.told(state),
                        ProductNames.of(mix, batch.airPercent()),
                        List.of(Declarations.allergens(mix), Declarations.alcohol(mix)),
                        notes.stream().distinct().toList());
        return new BatchAnalysis(
                preview, plan, setup.vessels(), setup.coldC(), crystals, state, kitchen, report);
    }

    /** Minutes until a recipe is soft-serve, without its other results; infinite for never. */
    public static double minutesToSoftServe(Recipe batch) {
        return FreezeMethodSetup.of(batch, BatchPreview.of(batch).mix())
                .plan()
                .minutesToSoftServe();
    }

    public Recipe batch() {
        return preview.batch();
    }

    public Mix mix() {
        return preview.mix();
    }

    public FreezingCurve curve() {
        return preview.curve();
    }

    /** What it is judged as, under which diet, and which pieces are folded in. */
    public List<Phrase> judged() {
        List<Phrase> judged = new ArrayList<>();
        boolean stated = batch().intent().style().value().isPresent();
        judged.add(
                Phrase.of(
                        "batch",
                        stated ? "judged" : "judged.guessed",
                        state.style().phrase(),
                        state.making().servingC()));
        if (!state.diet().rules().isEmpty()) {
            judged.add(
                    Phrase.of(
                            "batch",
                            "judged.diet",
                            state.diet().rules().stream().sorted().map(Worded::phrase).toList()));
        }
        Pieces pieces = state.pieces();
        if (!pieces.folded().isEmpty()) {
            judged.add(
                    Phrase.of(
                            "batch",
                            "judged.pieces",
                            pieces.folded().stream().map(one -> one.ingredient().phrase()).toList(),
                            pieces.sharePercent()));
            pieces.sugarGivenUpG()
                    .ifPresent(g -> judged.add(Phrase.of("batch", "judged.soaked", g)));
        }
        return judged;
    }

    /**
     * Up to three plans that resolve its findings; takes up to half a second.
     *
     * @return the best first; empty for a sound batch
     */
    public List<Plan> plans() {
        return Planner.plans(state, kitchen);
    }
}
