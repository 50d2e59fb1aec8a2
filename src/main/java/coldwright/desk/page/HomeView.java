package coldwright.desk.page;

import coldwright.desk.layout.AfterFrame;
import coldwright.desk.layout.CodeSentence;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.model.DeskModel;
import coldwright.desk.prose.Typography;

import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

import java.util.LinkedHashMap;
import java.util.Map;

/** The first page: introduction, where to begin, where to continue. */
final class HomeView extends ScrollPane {
    private final DeskModel desk;
    private final VBox startBox = new VBox();
    private final VBox course = new VBox();

    HomeView(DeskModel desk, Runnable openFile) {
        this.desk = desk;
        getStyleClass().addAll("reading", "home");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        startBox.getStyleClass().add("home-start");
        course.getStyleClass().add("home-course");
        Button file = TextControls.button(Messages.of("home.own-lesson"), openFile);
        Button batch = TextControls.button(Messages.of("batch.home"), desk::openBatches);
        VBox column =
                new VBox(
                        TextControls.label("Coldwright", "lesson-title"),
                        TextControls.label(Messages.of("home.what"), "home-what"),
                        startBox,
                        batch,
                        course,
                        file,
                        new CodeSentence(Messages.of("home.caution"), "home-caution"));
        if (KitchenTrialsView.comesWithTheProgram()) {
            Button trials = TextControls.button(Messages.of("trials.home"), desk::openTrials);
            column.getChildren().add(column.getChildren().indexOf(batch) + 1, trials);
        }
        column.getStyleClass().addAll("column", "home-column");
        StackPane sheet = new StackPane(column);
        sheet.getStyleClass().add("sheet");
        setContent(sheet);
        desk.lessons().addListener((InvalidationListener) value -> fill());
        fill();
    }

    /** Focuses the button that most people begin with. */
    void focusFirst() {
        lookupAll(".home-big").stream().findFirst().ifPresent(Node::requestFocus);
    }

    /** Fills the page from the current state. */
    void fill() {
        startBox.getChildren().clear();
        desk.startedLesson()
                .ifPresent(
                        lesson ->
                                startBox.getChildren()
                                        .add(
                                                big(
                                                        Messages.of("home.go-on"),
                                                        lesson,
                                                        lesson.inSight().get().title())));
        if (!desk.lessons().isEmpty()) {
            LessonModel first = desk.lessons().get(0);
            startBox.getChildren()
                    .add(big(Messages.of("home.start"), first, first.lesson().title()));
        }
        course.getChildren().clear();
        Map<String, VBox> tracks = new LinkedHashMap<>();
        for (LessonModel lesson : desk.lessons()) {
            tracks.computeIfAbsent(lesson.lesson().track(), this::track)
                    .getChildren()
                    .add(row(lesson));
        }
        course.getChildren().addAll(tracks.values());
        AfterFrame.after(1, this::focusFirst);
    }

    private VBox track(String name) {
        VBox track = new VBox();
        track.getStyleClass().add("home-track");
        if (!name.isEmpty()) {
            track.getChildren().add(TextControls.label(Typography.of(name), "kicker"));
        }
        return track;
    }

    private Node big(String word, LessonModel lesson, String where) {
        Button button = TextControls.button(word, () -> desk.open(lesson));
        button.getStyleClass().add("home-big");
        Label title = TextControls.label(Typography.of(where), "home-where");
        VBox both = new VBox(button, title);
        both.getStyleClass().add("home-choice");
        return both;
    }

    private Node row(LessonModel lesson) {
        int all = lesson.steps().size();
        int done = lesson.stepsDone();
        String title = Typography.of(lesson.lesson().title());
        Button button = new Button(title);
        button.setWrapText(true);
        button.setMinHeight(USE_PREF_SIZE);
        button.getStyleClass().setAll("entry", "home-lesson");
        button.setOnAction(event -> desk.open(lesson));
        String state =
                done == 0
                        ? Messages.of("home.minutes", lesson.lesson().minutes())
                        : Messages.of("home.done", String.valueOf(done), String.valueOf(all));
        boolean tell = done > 0 || !lesson.lesson().minutes().isEmpty();
        Label far = TextControls.label(tell ? state : "", "home-state");
        button.setAccessibleText(title + ". " + far.getText());
        VBox row = new VBox(button, far);
        row.getStyleClass().add("home-row");
        return row;
    }
}
