package coldwright.science.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Causes of a symptom, ranked.
 *
 * <p>Each suspect is measured on the batch and compared with the usual range. Its weight is the
 * number of steps beyond that range times the share that shows in the symptom. The measures are
 * computed; the usual ranges are sourced or marked; the steps and shares that rank unlike things
 * against each other are judgement. So treat the order as a hint and look at the figures.
 *
 * <pre>{@code
 * Diagnosis.of(Situation.of(mix).servedAt(-12), Symptom.HARD).get(0).fixes();
 * }</pre>
 */
public final class Diagnosis {
    /** Findings are reported from a quarter of a step on. */
    private static final double WORTH_TELLING_STEPS = 0.25;

    private Diagnosis() {}

    /**
     * Ranks the causes of a symptom.
     *
     * @param situation the batch, its freezing and storage
     * @param symptom what is wrong
     * @return the causes found, the likeliest first; empty if everything measured is as usual
     */
    public static List<Cause> of(Situation situation, Symptom symptom) {
        return ranked(situation, new SuspectTable(situation).behindTasted(symptom));
    }

    private static List<Cause> ranked(Situation situation, List<SuspectMeasure> suspects) {
        List<Cause> causes = new ArrayList<>();
        double all = 0;
        for (SuspectMeasure suspectMeasure : suspects) {
            if (suspectMeasure.steps(situation.mix()) > 0) {
                Cause cause = suspectMeasure.cause(situation.mix());
                causes.add(cause);
                all += cause.steps();
            }
        }
        double allSteps = all;
        return causes.stream()
                .map(cause -> cause.shareOf(allSteps))
                .sorted(Comparator.comparingDouble(Cause::steps).reversed())
                .toList();
    }

    /**
     * Predicts symptoms before tasting: the first cause of each symptom that the figures suggest;
     * of hard and too soft only the likelier one.
     *
     * @param situation the batch, its freezing and storage
     * @return the findings, the most certain first; empty for a batch without fault
     */
    public static List<Finding> foresee(Situation situation) {
        Map<Symptom, List<Cause>> all = new EnumMap<>(Symptom.class);
        SuspectTable suspectTable = new SuspectTable(situation);
        for (Symptom symptom : Symptom.values()) {
            List<Cause> causes = ranked(situation, suspectTable.behind(symptom));
            if (!causes.isEmpty() && causes.get(0).steps() >= WORTH_TELLING_STEPS) {
                all.put(symptom, causes);
            }
        }
        if (all.containsKey(Symptom.HARD) && all.containsKey(Symptom.TOO_SOFT)) {
            boolean hard = steps(all.get(Symptom.HARD)) >= steps(all.get(Symptom.TOO_SOFT));
            all.remove(hard ? Symptom.TOO_SOFT : Symptom.HARD);
        }
        Set<CauseKind> named = EnumSet.noneOf(CauseKind.class);
        return all.keySet().stream()
                .filter(symptom -> named.add(all.get(symptom).get(0).kind()))
                .sorted(Comparator.comparingDouble(symptom -> -steps(all.get(symptom))))
                .map(symptom -> finding(situation, symptom, all.get(symptom)))
                .toList();
    }

    private static double steps(List<Cause> causes) {
        return causes.get(0).steps();
    }

    private static Finding finding(Situation situation, Symptom symptom, List<Cause> causes) {
        return new Finding(symptom, ExpectedFindings.of(situation, symptom, causes), causes.get(0));
    }
}
