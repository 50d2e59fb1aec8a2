package coldwright.play;

import coldwright.bench.ExpressionEvaluator;
import coldwright.bench.FinishedRun;
import coldwright.bench.RunOutcome;
import coldwright.lesson.LessonClaim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Several claims tried together, in one snippet. */
public final class ClaimTrial {
    private ClaimTrial() {}

    /**
     * Java that tries claims: one by itself as its author wrote it, several together. If one of
     * several can't be compiled, none is tried.
     *
     * @return one snippet, to be run after the snippets above the claims
     */
    public static String snippet(List<? extends LessonClaim> claims) {
        return claims.size() == 1
                ? claims.get(0).expression()
                : ExpressionEvaluator.snippet(
                        claims.stream().map(LessonClaim::expression).toList());
    }

    /**
     * Judges claims by the run of their {@link #snippet}. Of several, one without a result is to be
     * tried again by itself, so that its message is that of a run of its own.
     *
     * @return a verdict for each claim, in order; empty for one that is to be tried by itself
     */
    public static List<Optional<ClaimVerdict>> verdicts(
            List<? extends LessonClaim> claims, FinishedRun run) {
        if (claims.size() == 1) {
            return List.of(Optional.of(ClaimVerdict.of(claims.get(0), run.outcome())));
        }
        List<RunOutcome> outcomes = ExpressionEvaluator.read(run.printed());
        boolean complete = run.outcome().finished() && outcomes.size() == claims.size();
        return IntStream.range(0, claims.size())
                .mapToObj(
                        i ->
                                complete
                                        ? Optional.of(
                                                        ClaimVerdict.of(
                                                                claims.get(i), outcomes.get(i)))
                                                .filter(ClaimTrial::isFinal)
                                        : Optional.<ClaimVerdict>empty())
                .toList();
    }

    private static boolean isFinal(ClaimVerdict verdict) {
        return verdict.state() != ClaimVerdict.State.FAILED;
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
        List<Optional<ClaimVerdict>> together = verdicts(claims, run(claims, above, runner));
        for (int i = 0; i < claims.size(); i++) {
            List<? extends LessonClaim> one = claims.subList(i, i + 1);
            all.add(
                    together.get(i)
                            .orElseGet(() -> verdicts(one, run(one, above, runner)).get(0).get()));
        }
        return all;
    }

    private static FinishedRun run(
            List<? extends LessonClaim> claims, List<String> above, BlockingRunner runner) {
        String snippet = snippet(claims);
        FinishedRun run = runner.run(List.copyOf(above), snippet);
        if (run.outcome().finished()) {
            above.add(snippet);
        }
        return run;
    }
}
