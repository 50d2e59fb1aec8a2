package coldwright.desk.figure;

import coldwright.desk.figure.model.FigureModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.figure.Drawing;
import coldwright.paint.FigureFiles;
import coldwright.paint.MovingPicture;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.FigureTheme;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Spinner;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;

/** How a drawing becomes a film, the progress of its saving, and a button that stops it. */
final class FilmForm extends VBox {
    private static final List<FigureFormat> SIZES =
            List.of(
                    FigureFormat.of(1280, 720),
                    FigureFormat.of(1920, 1080),
                    FigureFormat.of(3840, 2160));
    private static final List<FigureTheme> GROUNDS =
            List.of(FigureTheme.LIGHT, FigureTheme.DARK, FigureTheme.LIGHT.transparent());

    private final FigureModel model;
    private final FigureSettings room;
    private final Spinner<Integer> seconds = new Spinner<>(1, 60, 5);
    private final ChoiceBox<String> size =
            choice(SIZES.stream().map(one -> one.width() + " × " + one.height()).toList());
    private final Spinner<Integer> type = new Spinner<>(12, 72, 32, 4);
    private final ChoiceBox<String> ground = choice(words("light", "dark", "clear"));
    private final ChoiceBox<String> kind = choice(words("gif", "frames"));
    private final CheckBox caption = new CheckBox(Messages.of("figure.film.caption"));
    private final Button save = TextControls.button(Messages.of("figure.film.save"), this::save);
    private final AtomicBoolean going = new AtomicBoolean();
    private final Button stop =
            TextControls.button(Messages.of("figure.film.stop"), () -> going.set(false));
    private final Label said = TextControls.label("", "note");

    FilmForm(FigureModel model, FigureSettings room) {
        this.model = model;
        this.room = room;
        caption.setSelected(true);
        editor(seconds, "seconds");
        editor(type, "type");
        size.getSelectionModel().select(1);
        TextControls.show(stop, false);
        TextControls.show(this, false);
        FlowPane options =
                new FlowPane(
                        12,
                        4,
                        labelled("kind", kind),
                        labelled("seconds", seconds),
                        labelled("size", size),
                        labelled("type", type),
                        labelled("ground", ground),
                        caption);
        getChildren().addAll(options, new HBox(12, save, stop, said));
        getStyleClass().add("film");
    }

    private static List<String> words(String... names) {
        return List.of(names).stream().map(one -> Messages.of("figure.film." + one)).toList();
    }

    private static ChoiceBox<String> choice(List<String> words) {
        ChoiceBox<String> choice = new ChoiceBox<>();
        choice.getItems().setAll(words);
        choice.getSelectionModel().select(0);
        return choice;
    }

    private static void editor(Spinner<Integer> number, String name) {
        number.getEditor().setPrefColumnCount(3);
        number.getEditor().setAccessibleText(Messages.of("figure.film." + name));
    }

    private static HBox labelled(String name, Control control) {
        Label label = TextControls.label(Messages.of("figure.film." + name));
        label.setLabelFor(control);
        HBox both = new HBox(4, label, control);
        both.setAlignment(Pos.BASELINE_LEFT);
        return both;
    }

    /** Shows it, or hides it again. */
    void turn() {
        TextControls.show(this, !isManaged());
    }

    private void save() {
        if (!(model.seen() instanceof Drawing drawing) || going.get()) {
            return;
        }
        boolean gif = kind.getSelectionModel().getSelectedIndex() == 0;
        FigureFormat format =
                SIZES.get(size.getSelectionModel().getSelectedIndex())
                        .withType(type.getValue())
                        .withTheme(GROUNDS.get(ground.getSelectionModel().getSelectedIndex()));
        MovingPicture film =
                MovingPicture.of(drawing, caption.isSelected(), seconds.getValue(), format);
        String name = FigureFiles.nameFor(drawing, "").replaceFirst("\\.$", "");
        room.fileAsk()
                .where(name, List.of(gif ? "gif" : "frames"), getScene().getWindow())
                .map(place -> Path.of(place.toString().replaceFirst("\\.frames$", "")))
                .ifPresent(place -> save(film, gif, place));
    }

    private void save(MovingPicture film, boolean gif, Path place) {
        going.set(true);
        TextControls.show(stop, true);
        Executor window = room.renderContext().window();
        int all = gif ? film.pictures().size() : film.frames();
        CompletableFuture.supplyAsync(() -> written(film, gif, place, all))
                .whenCompleteAsync(
                        (done, error) -> {
                            going.set(false);
                            TextControls.show(stop, false);
                            said.setText(
                                    error != null
                                            ? Messages.of(
                                                    "figure.not-saved",
                                                    place,
                                                    FigureExport.words(error))
                                            : done
                                                    ? Messages.of("figure.saved", place)
                                                    : Messages.of("figure.film.stopped"));
                        },
                        window);
    }

    private boolean written(MovingPicture film, boolean gif, Path place, int all) {
        try {
            return gif
                    ? film.gif(place, done -> goesOn(done, all))
                    : film.frames(place, done -> goesOn(done, all));
        } catch (IOException e) {
            throw FigureExport.unsaved(e);
        }
    }

    private boolean goesOn(int done, int all) {
        room.renderContext()
                .window()
                .execute(() -> said.setText(Messages.of("figure.film.progress", done, all)));
        return going.get();
    }
}
