package coldwright.terminal;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchAnalysisText;
import coldwright.batch.BatchAnalysisTree;
import coldwright.batch.BatchFileException;
import coldwright.batch.RecipeFile;
import coldwright.batch.RecipeFileReader;
import coldwright.print.MakeSheet;
import coldwright.print.PaperSize;
import coldwright.terminal.console.ExitCode;
import coldwright.terminal.console.JsonWriter;
import coldwright.terminal.console.TerminalScreen;
import coldwright.text.WholeFile;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

/** {@code batch FILE [--json | --why | --sheet OUT [--replace]]}. */
@Command(
        name = "batch",
        description = {
            "Reads a recipe file and prints its analysis: what is in it, how it freezes, how"
                    + " long that takes, crystals, sweetness, and what to expect and fix. With"
                    + " --sheet it writes one page to make it by instead."
        },
        exitCodeListHeading = "%nIt ends with%n",
        exitCodeList = {
            "0:the batch was analysed",
            "1:not overwritten: add --replace",
            "2:the file can't be used or written; a sentence says why"
        })
final class BatchCommand implements Callable<Integer> {
    private final TerminalScreen screen;

    @Parameters(paramLabel = "FILE", description = "A recipe file; docs/batch-file.md explains it.")
    private Path file;

    @Option(names = "--json", description = "Prints one JSON object instead of a page.")
    private boolean json;

    @Option(
            names = "--why",
            description =
                    "Adds the sources: which values are measured, published, typical or rules of"
                            + " thumb.")
    private boolean why;

    @Option(
            names = "--sheet",
            paramLabel = "OUT",
            description =
                    "Writes a sheet for the kitchen: amounts, method, shopping, ice and salt,"
                            + " cautions; a name that ends in .pdf or .html.")
    private Path sheet;

    @Option(
            names = "--paper",
            paramLabel = "a4|letter",
            defaultValue = "a4",
            description = "The paper of the sheet; a4 if left out.")
    private String paper;

    @Option(
            names = "--replace",
            description = "Write over a sheet that is there already, without asking.")
    private boolean replace;

    BatchCommand(TerminalScreen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        try {
            RecipeFile batch = RecipeFileReader.read(file);
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
        } catch (BatchFileException | IllegalArgumentException e) {
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
        MakeSheet.Pages pages = pdf ? MakeSheet.pdf(batchAnalysis, on) : null;
        byte[] bytes =
                pdf
                        ? pages.bytes()
                        : MakeSheet.html(batchAnalysis, on).getBytes(StandardCharsets.UTF_8);
        try {
            WholeFile.write(sheet, bytes);
        } catch (WholeFile.UnwrittenException e) {
            screen.complain(e.getMessage());
            return ExitCode.NOT_UNDERSTOOD;
        }
        screen.say(
                pdf && pages.pages() > 1
                        ? "%s, on %d pages, because it is too long for one"
                                .formatted(sheet, pages.pages())
                        : sheet.toString());
        return ExitCode.DONE;
    }
}
