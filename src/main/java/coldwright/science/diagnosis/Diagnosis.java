package coldwright.science.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Causes of a symptom, ranked.
 *
 * <p>Each suspect is measured on the batch and held against what is usual; how many steps it lies
 * beyond, times how much of that shows in the symptom, is its weight. The measures are computed;
 * the usual ranges are sourced or marked; the steps and shares that rank unlike things against each
 * other are judgement. So the order is a hint and the figures are the ground under it.
 *
 * <pre>{@code
 * Diagnosis.of(Situation.of(mix).servedAt(-12), Symptom.HARD).get(0).mends();
 * }</pre>
 */
public final class Diagnosis {
    /** Findings are told from a quarter of a step on. */
    private static final double WORTH_TELLING_STEPS = 0.25;

    private Diagnosis() {}

    /**
     * The causes of what somebody tastes.
     *
     * @param situation the batch and what it meets
     * @param symptom what is wrong
     * @return the causes found, the likeliest first; empty if everything measured is as usual
     */
    public static List<Cause> of(Situation situation, Symptom symptom) {
        List<Cause> causes = new ArrayList<>();
        double all = 0;
        for (Suspect suspect : new Suspects(situation).behind(symptom)) {
            if (suspect.steps(situation.mix()) > 0) {
                Cause cause = suspect.cause(situation.mix());
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
     * What to expect before anybody has tasted: the first cause of each symptom that the figures
     * give reason for.
     *
     * @param situation the batch and what it meets
     * @return the findings, the most certain first; empty for a batch without fault
     */
    public static List<Finding> foresee(Situation situation) {
        record Weighed(double steps, Finding finding) {}
        List<Weighed> found = new ArrayList<>();
        List<String> told = new ArrayList<>();
        for (Symptom symptom : Symptom.values()) {
            List<Cause> causes = of(situation, symptom);
            if (!causes.isEmpty() && causes.get(0).steps() >= WORTH_TELLING_STEPS) {
                Cause first = causes.get(0);
                if (!told.contains(first.what())) {
                    told.add(first.what());
                    found.add(
                            new Weighed(
                                    first.steps(),
                                    new Finding(
                                            "expect it " + expected(symptom) + ": " + first.what(),
                                            first.why(),
                                            first.advice())));
                }
            }
        }
        return found.stream()
                .sorted(Comparator.comparingDouble(Weighed::steps).reversed())
                .map(Weighed::finding)
                .toList();
    }

    private static String expected(Symptom symptom) {
        return switch (symptom) {
            case ICY, HARD, TOO_SOFT, BUTTERY, SANDY, WEAK, GUMMY, TOO_SWEET ->
                    "to be " + symptom.words();
            case WILL_NOT_FREEZE -> "not to freeze well";
            case MELTS_FAST -> "to melt fast";
            case SHRINKS -> "to shrink";
        };
    }
}
