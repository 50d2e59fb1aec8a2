package coldwright.print;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunOutcome;
import coldwright.figure.Exhibit;
import coldwright.text.DisplayText;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a snippet gave when it was run.
 *
 * @param printed what it printed
 * @param value what its last expression gave, as text; empty if nothing
 * @param trouble why it did not end well, one sentence; empty if it did
 * @param exhibits what it drew, in order
 * @param solved what the author's solution gave in its place, if it was run
 */
public record SnippetOutput(
        String printed,
        String value,
        String trouble,
        List<Exhibit> exhibits,
        Optional<SnippetOutput> solved) {
    /** A snippet that was not run. */
    public static final SnippetOutput NOTHING =
            new SnippetOutput("", "", "", List.of(), Optional.empty());

    /**
     * What a run gave.
     *
     * @param run the run, as it ended
     * @param trouble says why it did not end well, in one sentence
     * @return what it printed, gave and drew, without a value if its last line only printed
     */
    static SnippetOutput of(FinishedRun run, Function<RunOutcome, String> trouble) {
        boolean finished = run.outcome() instanceof RunOutcome.Finished;
        String value =
                run.outcome() instanceof RunOutcome.Finished done && done.gaveValue()
                        ? DisplayText.result(done.value(), done.type())
                        : "";
        return new SnippetOutput(
                run.printed(),
                value,
                finished ? "" : trouble.apply(run.outcome()),
                run.exhibits(),
                Optional.empty());
    }

    /**
     * The same with what the author's solution gave.
     *
     * @param solution what it gave
     * @return with it
     */
    public SnippetOutput with(SnippetOutput solution) {
        return new SnippetOutput(printed, value, trouble, exhibits, Optional.of(solution));
    }

    /** What it printed and gave, a line each; empty if nothing. */
    String words() {
        return (printed.stripTrailing() + "\n" + value).strip();
    }

    /** Whether it ran and only said what things are: of that, nothing is to be written down. */
    boolean silent() {
        return words().isEmpty() && exhibits.isEmpty() && trouble.isEmpty();
    }

    /** Copies what is given. */
    public SnippetOutput {
        exhibits = List.copyOf(exhibits);
    }
}
