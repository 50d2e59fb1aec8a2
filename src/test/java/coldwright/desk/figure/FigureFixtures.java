package coldwright.desk.figure;

import coldwright.desk.figure.model.PinnedFigures;
import coldwright.desk.figure.model.ShownFigure;
import coldwright.desk.page.OnPage;
import coldwright.figure.Drawing;
import coldwright.figure.Figure;
import coldwright.figure.Piece;
import coldwright.figure.Tint;

import javafx.application.Platform;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.ImageView;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;

import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;

/** Plates in a window of their own, without a bench. */
final class FigureFixtures {
    final ObservableList<ShownFigure> drawn = FXCollections.observableArrayList();
    final PinnedFigures pins = new PinnedFigures();
    final FigureSettings room;
    final VBox column = new VBox();

    /** Where a file shall go; none if nobody was asked. */
    Optional<Path> file = Optional.empty();

    FigureFixtures(Stage stage, ExecutorService pen) {
        room =
                new FigureSettings(
                        new RenderContext(FigurePainter.STILL, pen, Platform::runLater),
                        (name, endings, over) -> file);
        column.getChildren()
                .add(new FigureStack(drawn, room, pins, new SimpleBooleanProperty(true)));
        ScrollPane scroll = new ScrollPane(column);
        scroll.setFitToWidth(true);
        StackPane root = new StackPane(scroll);
        root.getStyleClass().add("desk");
        root.setStyle("-fx-font-size: 18px");
        for (String sheet : List.of("page.css", "figure.css")) {
            root.getStylesheets()
                    .add(
                            FigureFixtures.class
                                    .getResource("/coldwright/desk/" + sheet)
                                    .toExternalForm());
        }
        stage.setScene(new Scene(root, 640, 700));
        stage.setWidth(640);
        stage.setHeight(700);
        stage.setX(0);
        stage.setY(0);
        stage.show();
        stage.toFront();
        stage.requestFocus();
    }

    static Figure lines(double slope) {
        return Figure.of("Two lines")
                .x("sucrose", "%")
                .y("freezing point", "°C")
                .line("low", 0, 40, x -> -slope * x)
                .line("high", 0, 40, x -> -slope * x / 2);
    }

    static Drawing globules(int count) {
        List<Drawing.Moment> moments = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Piece disc = new Piece.Disc(5 + i, 5, 2, Tint.of(Tint.Role.FAT));
            moments.add(new Drawing.Moment(i, "min", "moved by " + i, List.of(disc)));
        }
        return Drawing.of(
                        "One globule",
                        new Drawing.Field(40, 20, "µm"),
                        new Drawing.ScaleBar(5, "5 µm"))
                .at(moments);
    }

    FigureView show(FxRobot robot, ShownFigure one) throws Exception {
        robot.interact(() -> drawn.setAll(one));
        return OnPage.waitFor(
                () ->
                        robot.lookup(".figure").queryAllAs(FigureView.class).stream()
                                .filter(plate -> imageOf(plate) != null)
                                .findFirst()
                                .orElse(null),
                "a painted plate");
    }

    static Object imageOf(FigureView plate) {
        return ((ImageView) plate.face().lookup(".image-view")).getImage();
    }

    static Optional<Labeled> word(FxRobot robot, String text) {
        return robot
                .lookup(node -> node instanceof Labeled one && text.equals(one.getText()))
                .queryAll()
                .stream()
                .filter(Node::isVisible)
                .map(Labeled.class::cast)
                .findFirst();
    }

    /** Presses a word by the keyboard alone. */
    static void pressWord(FxRobot robot, String text) throws Exception {
        Labeled word = OnPage.waitFor(() -> word(robot, text).orElse(null), "the word " + text);
        robot.interact(word::requestFocus);
        OnPage.waitFor(() -> word.isFocused() ? true : null, "the focus on " + text);
        robot.push(javafx.scene.input.KeyCode.SPACE);
        WaitForAsyncUtils.waitForFxEvents();
    }
}
