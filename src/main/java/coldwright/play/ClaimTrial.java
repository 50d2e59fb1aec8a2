package coldwright.play;

import coldwright.bench.ExpressionEvaluator;
import coldwright.bench.FinishedRun;
import coldwright.bench.RunOutcome;
import coldwright.lesson.LessonClaim;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Several claims tried together, in one snippet. */
public final class ClaimTrial {
    private ClaimTrial() {}

    /**
     * Java that tries claims together, and gives the values that a condition among them compares.
     * If one of them can't be compiled, none is tried.
     *
     * @return one snippet, to be run after the snippets above the claims
     */
    public static String snippet(List<? extends LessonClaim> claims) {
        List<String> all = new ArrayList<>();
        for (LessonClaim claim : claims) {
            int index = all.size();
            all.add(claim.expression());
            compared(claim).forEach(one -> all.add(ExpressionEvaluator.ifFalse(index, one)));
        }
        return ExpressionEvaluator.snippet(all);
    }

    /** The values that a claim compares: those of a condition. */
    private static List<String> compared(LessonClaim claim) {
        return claim.match(
                value -> List.of(),
                truth -> ComparedValues.of(truth.expression()),
                number -> List.of());
    }

    /**
     * Judges claims by the run of their {@link #snippet}. One without a result is to be tried again
     * by itself, as its author wrote it, so that its message is that of a run of its own.
     *
     * @return a verdict for each claim, in order; empty for one that is to be tried by itself
     */
    public static List<Optional<ClaimVerdict>> verdicts(
            List<? extends LessonClaim> claims, FinishedRun run) {
        List<RunOutcome> outcomes = ExpressionEvaluator.read(run.printed());
        int wanted = claims.stream().mapToInt(claim -> 1 + compared(claim).size()).sum();
        boolean complete = run.outcome().finished() && outcomes.size() == wanted;
        List<Optional<ClaimVerdict>> verdicts = new ArrayList<>();
        int at = 0;
        for (LessonClaim claim : claims) {
            int end = at + 1 + compared(claim).size();
            verdicts.add(
                    complete
                            ? Optional.of(verdict(claim, outcomes.subList(at, end)))
                                    .filter(one -> one.state() != ClaimVerdict.State.FAILED)
                            : Optional.empty());
            at = end;
        }
        return verdicts;
    }

    private static ClaimVerdict verdict(LessonClaim claim, List<RunOutcome> outcomes) {
        Map<String, Double> values = new LinkedHashMap<>();
        List<String> compared = compared(claim);
        for (int i = 0; i < compared.size(); i++) {
            String one = compared.get(i);
            ClaimVerdict.number(outcomes.get(i + 1)).ifPresent(value -> values.put(one, value));
        }
        return ClaimVerdict.of(claim, outcomes.get(0)).comparing(values);
    }

    /**
     * Tries claims and waits.
     *
     * @param above the snippets above; snippets that run to their end are added
     */
    static List<ClaimVerdict> of(
            List<? extends LessonClaim> claims, List<String> above, BlockingRunner runner) {
        if (claims.isEmpty()) {
            return List.of();
        }
        List<ClaimVerdict> all = new ArrayList<>();
        List<Optional<ClaimVerdict>> together =
                verdicts(claims, run(snippet(claims), above, runner));
        for (int i = 0; i < claims.size(); i++) {
            LessonClaim claim = claims.get(i);
            all.add(
                    together.get(i)
                            .or(
                                    () ->
                                            compared(claim).isEmpty()
                                                    ? Optional.empty()
                                                    : one(claim, above, runner))
                            .orElseGet(
                                    () ->
                                            ClaimVerdict.of(
                                                    claim,
                                                    run(claim.expression(), above, runner)
                                                            .outcome())));
        }
        return all;
    }

    private static Optional<ClaimVerdict> one(
            LessonClaim claim, List<String> above, BlockingRunner runner) {
        List<LessonClaim> one = List.of(claim);
        return verdicts(one, run(snippet(one), above, runner)).get(0);
    }

    private static FinishedRun run(String snippet, List<String> above, BlockingRunner runner) {
        FinishedRun run = runner.run(List.copyOf(above), snippet);
        if (run.outcome().finished()) {
            above.add(snippet);
        }
        return run;
    }
}
