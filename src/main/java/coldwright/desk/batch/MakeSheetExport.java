package coldwright.desk.batch;

import coldwright.batch.BatchAnalysis;
import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.batch.model.BatchesModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.run.ExceptionText;
import coldwright.print.MakeSheet;
import coldwright.print.PaperSize;
import coldwright.text.WholeFile;

import javafx.application.Platform;
import javafx.scene.control.Label;
import javafx.stage.FileChooser;

import java.io.File;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;

/** Writes the open batch as a make sheet to a file. */
final class MakeSheetExport {
    private MakeSheetExport() {}

    /** Asks for a file, writes it in the background, and shows the result. */
    static void ask(BatchesModel brew, Label told) {
        BatchModel batch = brew.open().get();
        if (batch == null || !batch.figuresAreOfNow()) {
            told.setText(Messages.of("batch.file.sheet.not-yet"));
            return;
        }
        BatchAnalysis all = batch.figures().get().orElseThrow();
        FileChooser chooser = new FileChooser();
        chooser.setTitle(Messages.of("batch.file.sheet"));
        String name = batch.recipe().get().name();
        chooser.setInitialFileName(MakeSheet.fileName(name) + ".pdf");
        chooser.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter("PDF · A4", "*.pdf"),
                        new FileChooser.ExtensionFilter("PDF · US Letter", "*.pdf"),
                        new FileChooser.ExtensionFilter("HTML", "*.html"));
        File file = chooser.showSaveDialog(told.getScene().getWindow());
        if (file == null) {
            return;
        }
        FileChooser.ExtensionFilter kind = chooser.getSelectedExtensionFilter();
        PaperSize paper =
                kind != null && kind.getDescription().contains("Letter")
                        ? PaperSize.LETTER
                        : PaperSize.A4;
        told.setText(Messages.of("batch.file.sheet.going", file.getName()));
        CompletableFuture.supplyAsync(() -> write(all, paper, file.toPath()))
                .exceptionally(e -> Messages.of("batch.file.not-kept", file, e.getMessage()))
                .thenAcceptAsync(told::setText, Platform::runLater);
    }

    /** Writes the make sheet and returns a sentence on the result. */
    static String write(BatchAnalysis all, PaperSize paper, Path file) {
        try {
            boolean pdf = !file.toString().toLowerCase(Locale.ROOT).endsWith(".html");
            MakeSheet.Pages pages = MakeSheet.file(all, paper, pdf);
            WholeFile.write(file, pages.bytes());
            return pages.pages() == 1
                    ? Messages.of("batch.file.sheet.done", file)
                    : Messages.of("batch.file.sheet.long", file, String.valueOf(pages.pages()));
        } catch (WholeFile.UnwrittenException e) {
            return ExceptionText.unwritten(file, e);
        }
    }
}
