package coldwright.desk.plate;

import coldwright.desk.model.PlateModel;
import coldwright.desk.model.Trouble;
import coldwright.desk.say.Say;
import coldwright.figure.Drawing;
import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.paint.DrawingPainter;
import coldwright.paint.FigureFiles;
import coldwright.paint.Sheet;
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

/** Takes a figure off the page: to the clipboard or into a file, always on white. */
final class Printing {
    private static final double FINE = 2;

    private final PlateModel model;
    private final PlateRoom room;
    private final Consumer<String> say;

    /**
     * Makes it.
     *
     * @param model what the plate shows
     * @param room what plates share
     * @param say tells the learner how it went
     */
    Printing(PlateModel model, PlateRoom room, Consumer<String> say) {
        this.model = model;
        this.room = room;
        this.say = say;
    }

    /** Puts an image on the clipboard. */
    void copy() {
        Exhibit exhibit = model.seen();
        Sheet sheet = exhibit instanceof Figure ? FigureFiles.SHEET : DrawingPainter.SHEET;
        Sitting sitting =
                new Sitting(
                        exhibit, model.earlier(), model.play().moment().get(), Optional.empty());
        Pens pens = room.pens();
        CompletableFuture.supplyAsync(
                        () -> pens.painter().paint(sitting, sheet.withScale(FINE)), pens.work())
                .whenCompleteAsync(
                        (painted, trouble) -> {
                            if (trouble == null) {
                                ClipboardContent content = new ClipboardContent();
                                content.putImage(Paper.imageOf(painted.picture()));
                                Clipboard.getSystemClipboard().setContent(content);
                                say.accept(Say.of("plate.copied"));
                            } else {
                                say.accept(Say.of("plate.not-copied", words(trouble)));
                            }
                        },
                        pens.window());
    }

    /** Asks for a file and writes it. */
    void save(Window window) {
        Exhibit exhibit = model.seen();
        int moment = model.play().moment().get();
        List<String> endings =
                exhibit instanceof Figure ? List.of("svg", "png", "csv") : List.of("svg", "png");
        String name = FigureFiles.nameFor(exhibit, "").replaceFirst("\\.$", "");
        room.fileAsk().where(name, endings, window).ifPresent(file -> write(exhibit, moment, file));
    }

    private void write(Exhibit exhibit, int moment, Path file) {
        Pens pens = room.pens();
        CompletableFuture.runAsync(() -> writeNow(exhibit, moment, file), pens.work())
                .whenCompleteAsync(
                        (nothing, trouble) ->
                                say.accept(
                                        trouble == null
                                                ? Say.of("plate.saved", file)
                                                : Say.of("plate.not-saved", file, words(trouble))),
                        pens.window());
    }

    private static void writeNow(Exhibit exhibit, int moment, Path file) {
        try {
            if (exhibit instanceof Figure figure) {
                FigureFiles.write(figure, file);
            } else if (exhibit instanceof Drawing drawing) {
                FigureFiles.write(drawing, moment, file);
            } else {
                throw new AssertionError(exhibit.getClass());
            }
        } catch (IOException e) {
            throw new IllegalStateException(
                    e instanceof WholeFile.UnwrittenException unwritten
                            ? Trouble.why(unwritten)
                            : e.getMessage(),
                    e);
        }
    }

    private static String words(Throwable trouble) {
        Throwable cause = trouble.getCause() == null ? trouble : trouble.getCause();
        return String.valueOf(cause.getMessage());
    }
}
