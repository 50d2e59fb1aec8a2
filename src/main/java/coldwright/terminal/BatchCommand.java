package coldwright.terminal;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchAnalysisText;
import coldwright.batch.BatchAnalysisTree;
import coldwright.batch.RecipeFile;
import coldwright.batch.RecipeFileReader;
import coldwright.print.MakeSheet;
import coldwright.print.PaperSize;
import coldwright.terminal.console.ExitCode;
import coldwright.terminal.console.JsonWriter;
import coldwright.terminal.console.TerminalScreen;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

/** {@code batch FILE [--json | --why | --sheet OUT [--replace]]}. */
@Command(name = "batch")
final class BatchCommand implements Callable<Integer> {
    private final TerminalScreen screen;

    @Parameters(paramLabel = "FILE", descriptionKey = "recipe")
    private Path file;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    @Option(names = "--why")
    private boolean why;

    @Option(names = "--sheet", paramLabel = "OUT")
    private Path sheet;

    @Option(names = "--paper", paramLabel = "a4|letter", defaultValue = "a4")
    private String paper;

    @Option(names = "--replace")
    private boolean replace;

    BatchCommand(TerminalScreen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        try {
            RecipeFile batch = RecipeFileReader.read(file, file.toString());
            BatchAnalysis batchAnalysis = BatchAnalysis.of(batch);
            batch.warnings().forEach(screen::complain);
            if (sheet != null) {
                return write(batchAnalysis);
            }
            screen.say(
                    json
                            ? JsonWriter.of(BatchAnalysisTree.of(batchAnalysis))
                            : (BatchAnalysisText.of(batchAnalysis)
                                            + (why ? BatchAnalysisText.sources(batchAnalysis) : ""))
                                    .stripTrailing());
            return ExitCode.DONE;
        } catch (IllegalArgumentException e) {
            screen.complain(e.getMessage());
            return ExitCode.NOT_UNDERSTOOD;
        }
    }

    private int write(BatchAnalysis batchAnalysis) {
        boolean pdf = PrintFile.isPdf(sheet);
        PaperSize on = PrintFile.paper(paper);
        if (!PrintFile.mayWrite(List.of(sheet), "--sheet", replace, screen)) {
            return ExitCode.FAILED;
        }
        MakeSheet.Pages pages = MakeSheet.file(batchAnalysis, on, pdf);
        String words =
                pages.pages() > 1 ? text("batch.pages", sheet, pages.pages()) : sheet.toString();
        return PrintFile.write(sheet, pages.bytes(), words, screen);
    }
}
