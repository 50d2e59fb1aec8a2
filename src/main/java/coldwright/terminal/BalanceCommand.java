package coldwright.terminal;

import coldwright.batch.BatchAnalysisText;
import coldwright.batch.BatchAnalysisTree;
import coldwright.batch.BatchBalance;
import coldwright.batch.RecipeFile;
import coldwright.batch.RecipeFileReader;
import coldwright.science.balance.Balanced;
import coldwright.terminal.console.ExitCode;
import coldwright.terminal.console.JsonWriter;
import coldwright.terminal.console.TerminalScreen;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import java.nio.file.Path;
import java.util.concurrent.Callable;

/** {@code balance FILE [--json]}. */
@Command(name = "balance")
final class BalanceCommand implements Callable<Integer> {
    private final TerminalScreen screen;

    @Parameters(paramLabel = "FILE", descriptionKey = "recipe")
    private Path file;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    BalanceCommand(TerminalScreen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        try {
            RecipeFile batch = RecipeFileReader.read(file, file.toString());
            Balanced found = BatchBalance.of(batch);
            batch.warnings().forEach(screen::complain);
            screen.say(
                    json
                            ? JsonWriter.of(BatchAnalysisTree.of(found))
                            : BatchAnalysisText.of(found).stripTrailing());
            return found.met() ? ExitCode.DONE : ExitCode.FAILED;
        } catch (IllegalArgumentException e) {
            screen.complain(e.getMessage());
            return ExitCode.NOT_UNDERSTOOD;
        }
    }
}
