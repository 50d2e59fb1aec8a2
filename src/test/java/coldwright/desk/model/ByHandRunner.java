package coldwright.desk.model;

import coldwright.bench.Outcome;
import coldwright.bench.Run;
import coldwright.bench.RunWatcher;
import coldwright.figure.Figure;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;

/** Stands for the bench in tests: keeps what it is asked for and answers when told. */
public final class ByHandRunner implements Runner {
    /** What was asked. */
    record Asked(
            List<String> above,
            String snippet,
            RunWatcher watcher,
            CompletableFuture<Run> answer) {}

    final List<Asked> asked = new ArrayList<>();
    int stops;

    @Override
    public CompletableFuture<Run> run(List<String> above, String snippet, RunWatcher watcher) {
        Asked one = new Asked(above, snippet, watcher, new CompletableFuture<>());
        asked.add(one);
        return one.answer();
    }

    @Override
    public void stop() {
        stops++;
    }

    Asked last() {
        return asked.get(asked.size() - 1);
    }

    void finish(String printed, Figure... figures) {
        end(new Outcome.Finished("", ""), printed, figures);
    }

    void end(Outcome outcome, String printed, Figure... figures) {
        last().answer()
                .complete(
                        new Run(outcome, printed, false, List.of(figures), Duration.ofMillis(120)));
    }

    /** The run that goes on ends well, and soon. */
    void finish(Figure... figures) {
        last().answer()
                .complete(
                        new Run(
                                new Outcome.Finished("", ""),
                                "",
                                false,
                                List.of(figures),
                                Duration.ofMillis(2)));
    }

    int begun() {
        return asked.size();
    }

    String snippet() {
        return last().snippet();
    }

    List<String> above() {
        return last().above();
    }
}
