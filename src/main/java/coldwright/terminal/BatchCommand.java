package coldwright.terminal;

import coldwright.batch.BatchFault;
import coldwright.batch.BatchFile;
import coldwright.batch.BatchText;
import coldwright.batch.Reckoning;
import coldwright.batch.ReckoningText;
import coldwright.batch.ReckoningTree;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import java.nio.file.Path;
import java.util.concurrent.Callable;

/** {@code batch FILE [--json]}. */
@Command(
        name = "batch",
        description = {
            "Reads a batch file and prints the whole reckoning: what is in it, how it freezes, how"
                    + " long that takes, crystals, sweetness, and what to expect and mend."
        },
        exitCodeListHeading = "%nIt ends with%n",
        exitCodeList = {
            "0:the batch was reckoned",
            "2:the file can't be used; a sentence says why"
        })
final class BatchCommand implements Callable<Integer> {
    private final Screen screen;

    @Parameters(paramLabel = "FILE", description = "A batch file; docs/batch-file.md explains it.")
    private Path file;

    @Option(names = "--json", description = "Prints one JSON object instead of a page.")
    private boolean json;

    BatchCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        try {
            BatchFile batch = BatchText.read(file);
            Reckoning reckoning = Reckoning.of(batch);
            screen.say(
                    json
                            ? JsonText.of(ReckoningTree.of(reckoning))
                            : ReckoningText.of(reckoning).stripTrailing());
            return Exit.DONE;
        } catch (BatchFault e) {
            screen.complain(e.getMessage());
            return Exit.NOT_UNDERSTOOD;
        }
    }
}
