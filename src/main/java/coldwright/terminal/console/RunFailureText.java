package coldwright.terminal.console;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.bench.RunOutcome;
import coldwright.bench.SnippetProblem;

import java.util.List;

/** Errors of a run as sentences with line numbers. */
public final class RunFailureText {
    private static final int MOST_PROBLEMS = 5;

    private RunFailureText() {}

    /** One error of a run: its line in the snippet, from 1, 0 if unknown, and a sentence. */
    public record RunFailure(int line, String words) {
        /** The sentence with its line, if known. */
        public String sentence() {
            return line > 0 ? text("failure.line", line, words) : words;
        }
    }

    /** The errors of a run; empty if it ran to its end. */
    public static List<RunFailure> troubles(RunOutcome outcome) {
        if (outcome instanceof RunOutcome.Finished) {
            return List.of();
        }
        if (outcome instanceof RunOutcome.Rejected rejected) {
            return rejected.problems().stream()
                    .limit(MOST_PROBLEMS)
                    .map(RunFailureText::of)
                    .toList();
        }
        if (outcome instanceof RunOutcome.Threw threw) {
            return List.of(of(threw.problem()));
        }
        if (outcome instanceof RunOutcome.Stopped) {
            return List.of(new RunFailure(0, text("failure.stopped")));
        }
        if (outcome instanceof RunOutcome.Died died) {
            return List.of(new RunFailure(0, died.why()));
        }
        if (outcome instanceof RunOutcome.AboveFailed above) {
            String how = troubles(above.how()).get(0).words();
            return List.of(new RunFailure(0, text("failure.above", how)));
        }
        throw new AssertionError(outcome);
    }

    private static RunFailure of(SnippetProblem problem) {
        return new RunFailure(problem.line(), problem.words());
    }
}
