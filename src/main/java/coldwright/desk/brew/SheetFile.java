package coldwright.desk.brew;

import coldwright.batch.Reckoning;
import coldwright.desk.brew.model.BatchModel;
import coldwright.desk.brew.model.BrewModel;
import coldwright.desk.model.Trouble;
import coldwright.desk.say.Say;
import coldwright.print.MakeSheet;
import coldwright.print.Paper;
import coldwright.text.WholeFile;

import javafx.application.Platform;
import javafx.scene.control.Label;
import javafx.stage.FileChooser;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;

/** The open batch as a make sheet in a file. */
final class SheetFile {
    private SheetFile() {}

    /** Asks where to, writes it in the background, and tells when it is there. */
    static void ask(BrewModel brew, Label told) {
        BatchModel batch = brew.open().get();
        if (batch == null || !batch.figuresAreOfNow()) {
            told.setText(Say.of("batch.file.sheet.not-yet"));
            return;
        }
        Reckoning all = batch.figures().get().orElseThrow();
        FileChooser chooser = new FileChooser();
        chooser.setTitle(Say.of("batch.file.sheet"));
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
        Paper paper =
                kind != null && kind.getDescription().contains("Letter") ? Paper.LETTER : Paper.A4;
        told.setText(Say.of("batch.file.sheet.going", file.getName()));
        CompletableFuture.supplyAsync(() -> write(all, paper, file.toPath()))
                .exceptionally(e -> Say.of("batch.file.not-kept", file, e.getMessage()))
                .thenAcceptAsync(told::setText, Platform::runLater);
    }

    /** Writes it; says how that went. */
    static String write(Reckoning all, Paper paper, Path file) {
        try {
            if (file.toString().toLowerCase(Locale.ROOT).endsWith(".html")) {
                WholeFile.write(file, MakeSheet.html(all, paper).getBytes(StandardCharsets.UTF_8));
                return Say.of("batch.file.sheet.done", file);
            }
            MakeSheet.Pages pages = MakeSheet.pdf(all, paper);
            WholeFile.write(file, pages.bytes());
            return pages.pages() == 1
                    ? Say.of("batch.file.sheet.done", file)
                    : Say.of("batch.file.sheet.long", file, String.valueOf(pages.pages()));
        } catch (WholeFile.UnwrittenException e) {
            return Trouble.unwritten(file, e);
        }
    }
}
