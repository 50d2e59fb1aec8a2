package coldwright.desk.page;

import coldwright.desk.glossary.TermFinder;
import coldwright.desk.layout.PageStyles;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.StepModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.prose.ProseView;
import coldwright.lesson.LessonPart;

import javafx.beans.value.ChangeListener;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.stage.Window;

import java.util.List;
import java.util.function.Consumer;

/** The teacher's notes on the step in sight, in a window that the class can't see. */
final class NotesWindow {
    private static final double WIDTH_PX = 560;
    private static final double HEIGHT_PX = 520;

    private final Consumer<String> openLink;
    private final Stage stage = new Stage();
    private final VBox column = TextControls.styled(new VBox(), "column", "notes");
    private final ChangeListener<StepModel> sight = (value, was, is) -> show(is);

    NotesWindow(LessonModel lesson, Consumer<String> openLink, Window owner, Parent likeThis) {
        this.openLink = openLink;
        ScrollPane scroll = new ScrollPane(column);
        scroll.setFitToWidth(true);
        VBox root = new VBox(scroll);
        VBox.setVgrow(scroll, javafx.scene.layout.Priority.ALWAYS);
        root.getStylesheets().setAll(likeThis.getStylesheets());
        root.getStyleClass().setAll(likeThis.getStyleClass());
        root.setStyle("-fx-font-size: " + PageStyles.USUAL_EM_PX + "px;");
        stage.initOwner(owner);
        stage.setTitle(Messages.of("notes.title"));
        stage.setScene(new Scene(root, WIDTH_PX, HEIGHT_PX));
        stage.setOnHidden(event -> lesson.inSight().removeListener(sight));
        lesson.inSight().addListener(sight);
        show(lesson.inSight().get());
    }

    void open() {
        stage.show();
    }

    void close() {
        stage.close();
    }

    private void show(StepModel step) {
        column.getChildren().setAll(TextControls.label(step.title(), "step-title"));
        TermFinder terms = new TermFinder();
        List<LessonPart.Teacher> notes = step.notes();
        if (notes.isEmpty()) {
            column.getChildren().add(TextControls.label(Messages.of("notes.none"), "note"));
        }
        notes.forEach(
                note -> column.getChildren().add(new ProseView(note.nodes(), openLink, terms)));
    }
}
