package coldwright.terminal.check;

import coldwright.bench.ExpressionEvaluator;
import coldwright.bench.FinishedRun;
import coldwright.bench.RunOutcome;
import coldwright.terminal.console.BlockingBench;

import java.util.ArrayList;
import java.util.List;

/**
 * Several claims tried together. Whatever does not plainly hold there is tried once more by itself,
 * so that its words are those of a run of its own.
 */
public final class ClaimTrial {
    private ClaimTrial() {}

    /**
     * Tries claims after the snippets above.
     *
     * @param claims what is said, in order
     * @param above the snippets above; what ran to its end is put behind them
     * @param blockingBench runs them
     * @return a verdict for each claim, in order
     */
    public static List<ClaimVerdict> of(
            List<LessonClaim> claims, List<String> above, BlockingBench blockingBench) {
        List<RunOutcome> together =
                claims.size() > 1 ? together(claims, above, blockingBench) : List.of();
        List<ClaimVerdict> verdicts = new ArrayList<>();
        for (int i = 0; i < claims.size(); i++) {
            LessonClaim lessonClaim = claims.get(i);
            boolean holds =
                    i < together.size() && lessonClaim.judge().apply(together.get(i)).passed();
            RunOutcome outcome = holds ? together.get(i) : alone(lessonClaim, above, blockingBench);
            verdicts.add(lessonClaim.judge().apply(outcome));
        }
        return verdicts;
    }

    private static RunOutcome alone(
            LessonClaim lessonClaim, List<String> above, BlockingBench blockingBench) {
        RunOutcome outcome = blockingBench.run(above, lessonClaim.expression()).outcome();
        if (outcome.finished()) {
            above.add(lessonClaim.expression());
        }
        return outcome;
    }

    /** What each gave; none, if they can't be told apart. */
    private static List<RunOutcome> together(
            List<LessonClaim> claims, List<String> above, BlockingBench blockingBench) {
        String snippet =
                ExpressionEvaluator.snippet(claims.stream().map(LessonClaim::expression).toList());
        FinishedRun run = blockingBench.run(above, snippet);
        List<ExpressionEvaluator.Evaluation> given = ExpressionEvaluator.read(run.printed());
        if (!run.outcome().finished() || given.size() != claims.size()) {
            return List.of();
        }
        above.add(snippet);
        return given.stream().map(ClaimTrial::outcome).toList();
    }

    private static RunOutcome outcome(ExpressionEvaluator.Evaluation evaluation) {
        return evaluation.threw()
                ? new RunOutcome.Finished("", "")
                : new RunOutcome.Finished(evaluation.text(), evaluation.type());
    }
}
