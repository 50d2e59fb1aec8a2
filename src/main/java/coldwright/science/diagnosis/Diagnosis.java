package coldwright.science.diagnosis;

import coldwright.science.plan.BatchFault;
import coldwright.science.plan.BatchState;
import coldwright.science.plan.Faults;
import coldwright.science.plan.Finding;
import coldwright.words.Phrase;
import coldwright.words.Words;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Causes of a symptom, ranked.
 *
 * <p>Each cause is measured on the batch and compared with the usual range of its style. Its weight
 * is the number of steps beyond that range times the share that shows in the symptom. The measures
 * are computed; the usual ranges are sourced or marked; the steps and shares that rank unlike
 * things against each other are judgement. So treat the order as a hint and look at the figures.
 *
 * <pre>{@code
 * Diagnosis.of(Situation.of(mix).servedAt(-12), Symptom.HARD).get(0).why();
 * }</pre>
 */
public final class Diagnosis {
    private Diagnosis() {}

    /**
     * Ranks the causes of a symptom.
     *
     * @param situation the batch, its freezing and storage
     * @return the causes found, the likeliest first; empty if everything measured is as usual
     */
    public static List<Finding> of(Situation situation, Symptom symptom) {
        return of(situation.state(), symptom);
    }

    /**
     * As {@link #of(Situation, Symptom)}.
     *
     * @return the causes found, the likeliest first
     */
    public static List<Finding> of(BatchState state, Symptom symptom) {
        List<Finding> causes =
                symptom.causes().entrySet().stream()
                        .map(one -> Faults.measure(one.getKey(), state).asCause(one.getValue()))
                        .filter(cause -> cause.steps() > 0)
                        .sorted(Comparator.comparingDouble(Finding::steps).reversed())
                        .toList();
        double all = causes.stream().mapToDouble(Finding::steps).sum();
        return causes.stream().map(one -> one.sharing(100 * one.steps() / all)).toList();
    }

    /**
     * Predicts symptoms before tasting.
     *
     * @param situation the batch, its freezing and storage
     * @return the findings, the gravest first; empty for a batch without fault
     */
    public static List<Finding> foresee(Situation situation) {
        return Faults.of(situation.state());
    }

    /**
     * The batch judged so that a symptom must become less: where no cause of it is beyond its
     * range, the first one that a recipe can change must move by a step.
     *
     * @return the state to plan for
     */
    public static BatchState eased(BatchState state, Symptom symptom) {
        boolean told =
                Faults.of(state).stream()
                        .anyMatch(found -> symptom.causes().containsKey(found.fault()));
        return told
                ? state
                : symptom.causes().keySet().stream()
                        .filter(BatchFault::inRecipe)
                        .max(Comparator.comparingDouble(symptom.causes()::get))
                        .map(fault -> fault.eased(state))
                        .orElse(state);
    }

    /**
     * Faults of making that may be behind a symptom too, which no figure shows.
     *
     * @return a sentence; empty if there is none
     */
    public static Optional<Phrase> byHand(Symptom symptom) {
        String key = "by-hand." + symptom.name();
        return Words.of("science.plan").has(key)
                ? Optional.of(Phrase.of("science.plan", key))
                : Optional.empty();
    }
}
