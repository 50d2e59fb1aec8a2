package coldwright.desk.brew;

import coldwright.desk.brew.model.BatchShelf;
import coldwright.desk.brew.model.BrewModel;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;

import javafx.beans.InvalidationListener;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.stage.FileChooser;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/** A new batch, batch files, and the batch as code. */
final class FilesView extends FlowPane {
    private final BrewModel brew;
    private final Consumer<Path> openLesson;
    private final InvalidationListener listener = value -> fill();
    private final Label told = Words.label("", "note");
    private Optional<BatchShelf> shelf = Optional.empty();

    FilesView(BrewModel brew, Consumer<Path> openLesson) {
        this.brew = brew;
        this.openLesson = openLesson;
        getStyleClass().add("brew-choices");
        brew.shelf().addListener(value -> follow());
        follow();
    }

    private void follow() {
        shelf.ifPresent(was -> was.recent().removeListener(listener));
        shelf = brew.shelf().get();
        shelf.ifPresent(is -> is.recent().addListener(listener));
        fill();
    }

    private void fill() {
        getChildren()
                .setAll(
                        Words.button(
                                Say.of("batch.new"), () -> brew.begin(Say.of("batch.new-name"))));
        shelf.ifPresent(this::fill);
    }

    private void fill(BatchShelf is) {
        getChildren()
                .addAll(
                        Words.button(Say.of("batch.file.open"), () -> open(is)),
                        Words.button(Say.of("batch.file.save"), () -> save(is)),
                        Words.button(Say.of("batch.file.sheet"), () -> SheetFile.ask(brew, told)),
                        Words.button(
                                Say.of("batch.file.code"),
                                () -> is.showCode(brew.open().get(), openLesson)));
        getChildren().add(Words.shown(told, told.textProperty().isNotEmpty()));
        for (Path file : is.recent()) {
            String name = String.valueOf(file.getFileName());
            getChildren()
                    .add(
                            Words.button(
                                    Say.of("batch.file.recent", name), () -> is.open(file, brew)));
        }
    }

    private void open(BatchShelf is) {
        File file = chooser("batch.file.open").showOpenDialog(getScene().getWindow());
        if (file != null) {
            is.open(file.toPath(), brew);
        }
    }

    private void save(BatchShelf is) {
        FileChooser chooser = chooser("batch.file.save");
        String name = brew.open().get().recipe().get().name();
        chooser.setInitialFileName(
                name.replaceAll("[^\\p{L}\\p{N} -]", "").strip() + BatchShelf.ENDING);
        File file = chooser.showSaveDialog(getScene().getWindow());
        if (file != null) {
            is.save(brew.open().get(), file.toPath());
        }
    }

    private static FileChooser chooser(String title) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(Say.of(title));
        chooser.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter(
                                Say.of("batch.file.kind"), "*" + BatchShelf.ENDING),
                        new FileChooser.ExtensionFilter(Say.of("open-file.all"), "*"));
        return chooser;
    }
}
