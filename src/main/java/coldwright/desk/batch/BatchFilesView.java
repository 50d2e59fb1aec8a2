package coldwright.desk.batch;

import coldwright.desk.batch.model.BatchFiles;
import coldwright.desk.batch.model.BatchStore;
import coldwright.desk.batch.model.BatchesModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;

import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import javafx.util.Subscription;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/** Buttons for a new batch, for recipe files, and for the batch as code. */
final class BatchFilesView extends VBox {
    private final BatchesModel batches;
    private final Consumer<Path> openLesson;
    private final Subscription opened;
    private Subscription followed = Subscription.EMPTY;
    private final FlowPane deeds = InputFields.choices();
    private final FlowPane again = InputFields.choices();
    private final Label status = TextControls.label("", "note");
    private Optional<BatchFiles> files = Optional.empty();

    BatchFilesView(BatchesModel brew, Consumer<Path> openLesson) {
        this.batches = brew;
        this.openLesson = openLesson;
        getChildren()
                .addAll(
                        deeds,
                        again,
                        TextControls.shown(status, status.textProperty().isNotEmpty()));
        opened = brew.store().subscribe(this::follow);
        follow();
    }

    private void follow() {
        followed.unsubscribe();
        files = batches.store().get().map(BatchStore::files);
        followed =
                files.map(is -> is.recent().subscribe((Runnable) this::fill))
                        .orElse(Subscription.EMPTY);
        fill();
    }

    /** Stops following the store. */
    void close() {
        opened.unsubscribe();
        followed.unsubscribe();
    }

    private void fill() {
        deeds.getChildren()
                .setAll(
                        TextControls.button(
                                Messages.of("batch.new"),
                                () -> batches.startEmpty(Messages.of("batch.new-name"))));
        again.getChildren().clear();
        files.ifPresent(this::fill);
        TextControls.show(again, !again.getChildren().isEmpty());
    }

    private void fill(BatchFiles is) {
        Runnable sheet = () -> MakeSheetExport.ask(batches, status);
        Runnable code = () -> is.showCode(batches.open().get(), openLesson);
        deeds.getChildren()
                .addAll(
                        TextControls.button(Messages.of("batch.file.open"), () -> open(is)),
                        TextControls.button(Messages.of("batch.file.save"), () -> save(is)),
                        TextControls.button(Messages.of("batch.file.sheet"), sheet),
                        TextControls.button(Messages.of("batch.file.code"), code));
        if (!is.recent().isEmpty()) {
            InputFields.say(again, Messages.of("batch.file.again"), "brew-why");
        }
        for (Path file : is.recent()) {
            String name = String.valueOf(file.getFileName());
            again.getChildren().add(TextControls.button(name, () -> is.open(file, batches)));
        }
    }

    private void open(BatchFiles is) {
        File file = chooser("batch.file.open").showOpenDialog(getScene().getWindow());
        if (file != null) {
            is.open(file.toPath(), batches);
        }
    }

    private void save(BatchFiles is) {
        FileChooser chooser = chooser("batch.file.save");
        String name = batches.open().get().recipe().get().name();
        chooser.setInitialFileName(
                name.replaceAll("[^\\p{L}\\p{N} -]", "").strip() + BatchStore.ENDING);
        File file = chooser.showSaveDialog(getScene().getWindow());
        if (file != null) {
            is.save(batches.open().get(), file.toPath());
        }
    }

    private static FileChooser chooser(String title) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(Messages.of(title));
        chooser.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter(
                                Messages.of("batch.file.kind"), "*" + BatchStore.ENDING),
                        new FileChooser.ExtensionFilter(Messages.of("open-file.all"), "*"));
        return chooser;
    }
}
