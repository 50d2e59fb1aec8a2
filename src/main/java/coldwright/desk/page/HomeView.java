package coldwright.desk.page;

import coldwright.desk.layout.AfterFrame;
import coldwright.desk.layout.CodeSentence;
import coldwright.desk.layout.ScrollPage;
import coldwright.desk.layout.WhileShown;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.messages.Typography;
import coldwright.desk.model.DeskModel;

import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

import java.util.LinkedHashMap;
import java.util.Map;

/** The first page: introduction, where to begin, where to continue. */
final class HomeView extends ScrollPage {
    private final DeskModel desk;
    private final VBox startBox = new VBox();
    private final VBox course = new VBox();
    private boolean fillDue;

    HomeView(DeskModel desk, Runnable openFile) {
        super("home");
        this.desk = desk;
        startBox.getStyleClass().add("home-start");
        course.getStyleClass().add("home-course");
        add(
                TextControls.label("Coldwright", "lesson-title"),
                TextControls.label(Messages.of("home.what"), "home-what"),
                startBox,
                TextControls.button(Messages.of("batch.home"), desk::openBatches));
        if (KitchenTrialsView.comesWithTheProgram()) {
            add(TextControls.button(Messages.of("trials.home"), desk::openTrials));
        }
        add(
                TextControls.button(Messages.of("glossary.home"), () -> desk.openGlossary("")),
                course,
                TextControls.button(Messages.of("home.own-lesson"), openFile),
                new CodeSentence(Messages.of("home.caution"), "home-caution"));
        WhileShown.follow(this, this::fillSoon, desk.lessons(), desk.progress());
        AfterFrame.after(1, this::focusFirst);
    }

    /** Many lessons change at once when their work is loaded. */
    private void fillSoon() {
        if (!fillDue) {
            fillDue = true;
            Platform.runLater(
                    () -> {
                        fillDue = false;
                        fill();
                    });
        }
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
        if (getScene() != null && getScene().getFocusOwner() == null) {
            AfterFrame.after(1, this::focusFirst);
        }
    }

    private VBox track(String name) {
        VBox track = new VBox();
        track.getStyleClass().add("home-track");
        if (!name.isEmpty()) {
            track.getChildren().add(TextControls.label(name, "kicker"));
        }
        return track;
    }

    private Node big(String word, LessonModel lesson, String where) {
        Button button = TextControls.button(word, () -> desk.open(lesson));
        button.getStyleClass().add("home-big");
        Label title = TextControls.label(where, "home-where");
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
        boolean known = done > 0 || !lesson.lesson().minutes().isEmpty();
        Label far = TextControls.label(known ? state : "", "home-state");
        button.setAccessibleText(title + ". " + far.getText());
        VBox row = new VBox(button, far);
        row.getStyleClass().add("home-row");
        return row;
    }
}
