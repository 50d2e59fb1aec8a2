package coldwright.play;

import coldwright.bench.ExpressionEvaluator;
import coldwright.bench.FinishedRun;
import coldwright.bench.RunOutcome;
import coldwright.lesson.LessonClaim;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Several claims tried together, in one snippet. */
public final class ClaimTrial {
    private ClaimTrial() {}

    /**
     * Java that tries claims. If one of them can't be compiled, none is tried.
     *
     * @return one snippet, to be run after the snippets above the claims
     */
    public static String snippet(List<? extends LessonClaim> claims) {
        return ExpressionEvaluator.snippet(claims.stream().map(LessonClaim::expression).toList());
    }

    /**
     * Judges claims by what their snippet printed.
     *
     * @param printed all of it
     * @return their verdicts, in order; fewer than the claims if the run ended before its end
     */
    public static List<ClaimVerdict> verdicts(List<? extends LessonClaim> claims, String printed) {
        List<RunOutcome> outcomes = ExpressionEvaluator.read(printed);
        return IntStream.range(0, Math.min(claims.size(), outcomes.size()))
                .mapToObj(i -> ClaimVerdict.of(claims.get(i), outcomes.get(i)))
                .toList();
    }

    /**
     * Tries claims and waits. A claim that doesn't pass with the others is tried again by itself,
     * so that its message is that of a run of its own.
     *
     * @param above the snippets above; snippets that run to their end are added
     */
    static List<ClaimVerdict> of(
            List<? extends LessonClaim> claims, List<String> above, BlockingRunner runner) {
        List<ClaimVerdict> together =
                claims.size() > 1 ? together(claims, above, runner) : List.of();
        List<ClaimVerdict> verdicts = new ArrayList<>();
        for (int i = 0; i < claims.size(); i++) {
            boolean passed = i < together.size() && together.get(i).passed();
            verdicts.add(passed ? together.get(i) : alone(claims.get(i), above, runner));
        }
        return verdicts;
    }

    private static ClaimVerdict alone(
            LessonClaim claim, List<String> above, BlockingRunner runner) {
        RunOutcome outcome = runner.run(List.copyOf(above), claim.expression()).outcome();
        if (outcome.finished()) {
            above.add(claim.expression());
        }
        return ClaimVerdict.of(claim, outcome);
    }

    /** The verdicts of a complete run; none if they can't be separated. */
    private static List<ClaimVerdict> together(
            List<? extends LessonClaim> claims, List<String> above, BlockingRunner runner) {
        String snippet = snippet(claims);
        FinishedRun run = runner.run(List.copyOf(above), snippet);
        List<RunOutcome> outcomes = ExpressionEvaluator.read(run.printed());
        if (!run.outcome().finished() || outcomes.size() != claims.size()) {
            return List.of();
        }
        above.add(snippet);
        return verdicts(claims, run.printed());
    }
}
