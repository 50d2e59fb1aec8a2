package coldwright.desk.figure;

import coldwright.desk.figure.model.FigureModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.run.ExceptionText;
import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.paint.FigureFiles;
import coldwright.paint.style.FigureFormat;
import coldwright.text.WholeFile;

import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.stage.Window;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;

/** Exports a figure to the clipboard or a file, always on white. */
final class FigureExport {
    private static final double FINE = 2;

    private final FigureModel model;
    private final FigureSettings room;
    private final Consumer<String> say;

    /** Makes an export; {@code say} shows the learner the result. */
    FigureExport(FigureModel model, FigureSettings room, Consumer<String> say) {
        this.model = model;
        this.room = room;
        this.say = say;
    }

    void copy() {
        Exhibit exhibit = model.seen();
        FigureFormat format = FigureFiles.sheet(exhibit).withScale(FINE);
        RenderRequest renderRequest =
                new RenderRequest(
                        exhibit, model.earlier(), model.play().moment().get(), Optional.empty());
        RenderContext renderContext = room.renderContext();
        CompletableFuture.supplyAsync(
                        () -> renderContext.painter().paint(renderRequest, format),
                        renderContext.work())
                .whenCompleteAsync(
                        (figureImage, error) -> {
                            if (error == null) {
                                ClipboardContent content = new ClipboardContent();
                                content.putImage(ImagePane.imageOf(figureImage.picture()));
                                Clipboard.getSystemClipboard().setContent(content);
                                say.accept(Messages.of("figure.copied"));
                            } else {
                                say.accept(Messages.of("figure.not-copied", words(error)));
                            }
                        },
                        renderContext.window());
    }

    /** Asks for a file and writes the figure to it. */
    void save(Window window) {
        Exhibit exhibit = model.seen();
        int moment = model.play().moment().get();
        List<String> endings =
                exhibit instanceof Figure ? List.of("svg", "png", "csv") : List.of("svg", "png");
        String name = FigureFiles.nameFor(exhibit, "").replaceFirst("\\.$", "");
        room.fileAsk().where(name, endings, window).ifPresent(file -> write(exhibit, moment, file));
    }

    private void write(Exhibit exhibit, int moment, Path file) {
        RenderContext renderContext = room.renderContext();
        CompletableFuture.runAsync(() -> writeNow(exhibit, moment, file), renderContext.work())
                .whenCompleteAsync(
                        (nothing, error) ->
                                say.accept(
                                        error == null
                                                ? Messages.of("figure.saved", file)
                                                : Messages.of(
                                                        "figure.not-saved", file, words(error))),
                        renderContext.window());
    }

    private static void writeNow(Exhibit exhibit, int moment, Path file) {
        try {
            FigureFiles.write(exhibit, moment, file);
        } catch (IOException e) {
            throw unsaved(e);
        }
    }

    /** The reason why a file wasn't written, in words. */
    static IllegalStateException unsaved(IOException e) {
        return new IllegalStateException(
                e instanceof WholeFile.UnwrittenException unwritten
                        ? ExceptionText.why(unwritten)
                        : e.getMessage(),
                e);
    }

    static String words(Throwable error) {
        Throwable cause = error.getCause() == null ? error : error.getCause();
        return String.valueOf(cause.getMessage());
    }
}
