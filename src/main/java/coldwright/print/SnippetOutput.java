package coldwright.print;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunOutcome;
import coldwright.figure.Exhibit;
import coldwright.text.DisplayText;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The output of a snippet: printed text, value of its last expression if any, why it failed (one
 * sentence, empty if it did not), its figures and drawings in order, and the output of the author's
 * solution if that was run.
 */
public record SnippetOutput(
        String printed,
        String value,
        String trouble,
        List<Exhibit> exhibits,
        Optional<SnippetOutput> solved) {
    /** The output of a snippet that was not run. */
    public static final SnippetOutput NOTHING =
            new SnippetOutput("", "", "", List.of(), Optional.empty());

    /**
     * The output of a run, without a value if its last line only printed; {@code trouble} explains
     * a failed run in one sentence.
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

    /** Adds the output of the author's solution. */
    public SnippetOutput with(SnippetOutput solution) {
        return new SnippetOutput(printed, value, trouble, exhibits, Optional.of(solution));
    }

    /** Printed text and value, one per line; empty if there are none. */
    String words() {
        return (printed.stripTrailing() + "\n" + value).strip();
    }

    /** Whether it only made definitions, so that there is no output to write down. */
    boolean silent() {
        return words().isEmpty() && exhibits.isEmpty() && trouble.isEmpty();
    }

    public SnippetOutput {
        exhibits = List.copyOf(exhibits);
    }
}
