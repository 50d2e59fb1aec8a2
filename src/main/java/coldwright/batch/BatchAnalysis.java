package coldwright.batch;

import coldwright.science.diagnosis.Diagnosis;
import coldwright.science.diagnosis.Situation;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezing.FreezingCurve;
import coldwright.science.mix.Mix;
import coldwright.science.standards.Declarations;
import coldwright.science.standards.ProductNames;
import coldwright.words.Phrase;

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
 * @param report all results, to be shown
 */
public record BatchAnalysis(
        BatchPreview preview,
        FreezePlan plan,
        int parts,
        double coldC,
        Optional<CrystalsInStorage> crystals,
        BatchReport report) {
    private static final Phrase MELTED = Phrase.of("batch", "assumed.melted");

    /**
     * Analyses the recipe of a file.
     *
     * @throws BatchFileException if it can't be analysed; names file and line
     */
    public static BatchAnalysis of(RecipeFile file) throws BatchFileException {
        return file.ask(RecipeFile.Prevents.ANALYSIS, BatchAnalysis::of);
    }

    /**
     * Analyses a recipe.
     *
     * @throws BatchFileException if it can't be analysed, such as without water
     */
    public static BatchAnalysis of(Recipe batch) throws BatchFileException {
        return of(BatchPreview.of(batch));
    }

    /**
     * Completes a preview.
     *
     * @throws BatchFileException if it can't be analysed
     */
    public static BatchAnalysis of(BatchPreview preview) throws BatchFileException {
        try {
            return complete(preview);
        } catch (IllegalArgumentException e) {
            throw new BatchFileException(e.getMessage());
        }
    }

    private static BatchAnalysis complete(BatchPreview preview) {
        Recipe batch = preview.batch();
        Mix mix = preview.mix();
        FreezeMethodSetup setup = FreezeMethodSetup.of(batch, mix);
        FreezePlan plan = setup.plan();
        Optional<CrystalsInStorage> crystals =
                CrystalsInStorage.of(batch, mix, setup).map(CrystalsInStorage::calculated);
        List<Fact> facts = new ArrayList<>(preview.report().facts());
        facts.addAll(
                new ReportFacts()
                        .plan(plan, setup.vessels(), setup.coldC())
                        .stored(batch.stored())
                        .crystals(crystals)
                        .all());
        List<Phrase> notes = new ArrayList<>(setup.assumed());
        batch.lines().forEach(line -> Dextrose.note(line.name()).ifPresent(notes::add));
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
                        Diagnosis.foresee(situation(preview, setup.coldC(), crystals)),
                        ProductNames.of(mix, batch.airPercent()),
                        List.of(Declarations.allergens(mix), Declarations.alcohol(mix)),
                        notes.stream().distinct().toList());
        return new BatchAnalysis(preview, plan, setup.vessels(), setup.coldC(), crystals, report);
    }

    /** Minutes until a recipe is soft-serve, without its other results; infinite for never. */
    public static double minutesToSoftServe(Recipe batch) throws BatchFileException {
        BatchPreview preview = BatchPreview.of(batch);
        try {
            return FreezeMethodSetup.of(batch, preview.mix()).plan().minutesToSoftServe();
        } catch (IllegalArgumentException e) {
            throw new BatchFileException(e.getMessage());
        }
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

    /** The batch, its freezing and its crystals when tasted: the conditions for its findings. */
    public Situation situation() {
        return situation(preview, coldC, crystals);
    }

    private static Situation situation(
            BatchPreview preview, double coldC, Optional<CrystalsInStorage> crystals) {
        Situation bare =
                Situation.of(preview.mix()).frozenAt(coldC).withAir(preview.batch().airPercent());
        return crystals.map(
                        all -> {
                            Situation kept = bare.withCrystals(all.tasted().meanUm());
                            return all.kept()
                                    .flatMap(one -> all.steady())
                                    .map(steady -> kept.steadyWouldBe(steady.meanUm()))
                                    .orElse(kept);
                        })
                .orElse(bare);
    }
}
