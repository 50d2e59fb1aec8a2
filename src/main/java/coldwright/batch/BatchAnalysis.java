package coldwright.batch;

import coldwright.science.Require;
import coldwright.science.diagnosis.Diagnosis;
import coldwright.science.diagnosis.Finding;
import coldwright.science.diagnosis.Situation;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezing.FreezingCurve;
import coldwright.science.mix.Mix;
import coldwright.science.mix.SucroseEquivalentMethod;
import coldwright.science.sensory.Overrun;
import coldwright.science.sensory.Sweetness;
import coldwright.science.standards.Declarations;
import coldwright.science.standards.NameVerdict;
import coldwright.science.standards.ProductNames;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The analysis of a batch before it is made.
 *
 * @param batch its recipe
 * @param mix its mix
 * @param curve its freezing curve
 * @param trade results of the trade's method
 * @param sweetness its sweetness
 * @param air its overrun and density
 * @param plan minutes to each stage, for one part
 * @param parts number of equal parts it is frozen in
 * @param coldC temperature that freezes it at the start, °C
 * @param crystals its ice crystals, if it freezes
 * @param findings expected problems and how to fix them
 * @param names names it may be sold under
 * @param declarations allergens and alcohol, in sentences
 * @param notes assumptions and limits of the models
 */
public record BatchAnalysis(
        Recipe batch,
        Mix mix,
        FreezingCurve curve,
        SucroseEquivalentMethod trade,
        Sweetness sweetness,
        Overrun air,
        FreezePlan plan,
        int parts,
        double coldC,
        Optional<CrystalsInStorage> crystals,
        List<Finding> findings,
        List<NameVerdict> names,
        List<Phrase> declarations,
        List<Phrase> notes) {
    /** Thermal properties are tabulated down to −45 °C. */
    private static final double COLDEST_START_C = -40;

    private static final Phrase MELTED = Phrase.of("batch", "assumed.melted");

    public BatchAnalysis {
        findings = List.copyOf(findings);
        names = List.copyOf(names);
        declarations = List.copyOf(declarations);
        notes = List.copyOf(notes);
    }

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
        Mix mix = batch.mix();
        if (!(mix.waterPercent() > 0)) {
            throw new BatchFileException(
                    "the mix has no water, and water is what freezes; add water, milk or juice");
        }
        try {
            double startsC = mix.initialFreezingPointC();
            if (startsC < COLDEST_START_C) {
                throw new BatchFileException(
                        "the mix begins to freeze only at %s °C, and nothing colder than %s °C is calculated here; use less alcohol, sugar or salt to its water"
                                .formatted(
                                        Require.format(Math.rint(startsC)),
                                        Require.format(COLDEST_START_C)));
            }
            return of(batch, mix);
        } catch (IllegalArgumentException e) {
            throw new BatchFileException(e.getMessage());
        }
    }

    private static BatchAnalysis of(Recipe batch, Mix mix) {
        FreezingCurve curve = mix.freezingCurve();
        FreezeMethodSetup freezeMethodSetup = FreezeMethodSetup.of(batch, mix);
        FreezePlan plan = freezeMethodSetup.plan();
        Optional<CrystalsInStorage> keeping =
                CrystalsInStorage.of(batch, mix, freezeMethodSetup)
                        .map(CrystalsInStorage::calculated);
        List<Phrase> notes = new ArrayList<>(freezeMethodSetup.assumed());
        List<Phrase> said = plan.comments();
        curve.comments().stream().filter(note -> !said.contains(note)).forEach(notes::add);
        keeping.ifPresent(k -> notes.addAll(k.tasted().comments()));
        if (batch.stored().isPresent() && keeping.filter(k -> k.kept().isEmpty()).isPresent()) {
            notes.add(MELTED);
        }
        return new BatchAnalysis(
                batch,
                mix,
                curve,
                mix.tradeMethod(),
                Sweetness.of(mix),
                new Overrun(batch.airPercent()),
                plan,
                freezeMethodSetup.vessels(),
                freezeMethodSetup.coldC(),
                keeping,
                Diagnosis.foresee(
                        situation(mix, freezeMethodSetup.coldC(), batch.airPercent(), keeping)),
                ProductNames.of(mix, batch.airPercent()),
                List.of(Declarations.allergens(mix), Declarations.alcohol(mix)),
                notes.stream().distinct().toList());
    }

    /** The batch, its freezing and its crystals when tasted: the conditions for its findings. */
    public Situation situation() {
        return situation(mix, coldC, air.percent(), crystals);
    }

    private static Situation situation(
            Mix mix, double coldC, double airPercent, Optional<CrystalsInStorage> keeping) {
        Situation bare = Situation.of(mix).frozenAt(coldC).withAir(airPercent);
        if (keeping.isEmpty()) {
            return bare;
        }
        Situation kept = bare.withCrystals(keeping.get().tasted().meanUm());
        return keeping.get().kept().isPresent()
                ? keeping.get()
                        .steady()
                        .map(steady -> kept.steadyWouldBe(steady.meanUm()))
                        .orElse(kept)
                : kept;
    }
}
