package coldwright.desk.model;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunListener;
import coldwright.bench.RunOutcome;
import coldwright.bench.SnippetRights;
import coldwright.bench.compile.SnippetSource;
import coldwright.desk.run.SnippetRunner;
import coldwright.figure.Figure;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;

/** Stands for the bench in tests: keeps what it is asked for and answers when told. */
public final class ByHandRunner implements SnippetRunner {
    /** What was asked. */
    public record Asked(
            List<SnippetSource> snippets,
            RunListener watcher,
            CompletableFuture<FinishedRun> answer) {
        public String snippet() {
            return snippets.get(snippets.size() - 1).text();
        }

        public List<String> above() {
            return snippets.stream().limit(snippets.size() - 1).map(SnippetSource::text).toList();
        }
    }

    public final List<Asked> asked = new ArrayList<>();
    public int stops;

    @Override
    public CompletableFuture<FinishedRun> run(
            List<SnippetSource> snippets, SnippetRights rights, RunListener watcher) {
        Asked one = new Asked(snippets, watcher, new CompletableFuture<>());
        asked.add(one);
        return one.answer();
    }

    @Override
    public void stop() {
        stops++;
    }

    public Asked last() {
        return asked.get(asked.size() - 1);
    }

    public void finish(String printed, Figure... figures) {
        end(new RunOutcome.Finished("", ""), printed, figures);
    }

    public void end(RunOutcome outcome, String printed, Figure... figures) {
        last().answer()
                .complete(
                        new FinishedRun(
                                outcome, printed, false, List.of(figures), Duration.ofMillis(120)));
    }

    /** The run that goes on ends well, and soon. */
    public void finish(Figure... figures) {
        last().answer()
                .complete(
                        new FinishedRun(
                                new RunOutcome.Finished("", ""),
                                "",
                                false,
                                List.of(figures),
                                Duration.ofMillis(2)));
    }

    public int begun() {
        return asked.size();
    }

    public String snippet() {
        return last().snippet();
    }

    public List<String> above() {
        return last().above();
    }
}
