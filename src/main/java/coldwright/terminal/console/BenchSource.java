package coldwright.terminal.console;

import coldwright.bench.Bench;
import coldwright.bench.BenchClassPath;
import coldwright.bench.BenchSettings;
import coldwright.lesson.Prelude;

/** Gives commands their benches and takes them back. */
@FunctionalInterface
public interface BenchSource {
    /** A bench of its own for each command, closed with it. */
    BenchSource NEW =
            () ->
                    Bench.open(
                            BenchSettings.usual(BenchClassPath.ofThisProgram(), Prelude.imports()));

    /** A bench that nobody else uses. */
    Bench open();

    /** Takes a bench back. */
    default void close(Bench bench) {
        bench.close();
    }
}
