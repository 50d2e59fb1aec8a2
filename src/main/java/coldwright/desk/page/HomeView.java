package coldwright.desk.page;

import coldwright.desk.model.DeskModel;
import coldwright.desk.model.LessonModel;
import coldwright.desk.prose.Typography;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;

import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

import java.util.LinkedHashMap;
import java.util.Map;

/** The first page: what this is, where to begin, where to go on. */
final class HomeView extends ScrollPane {
    private final DeskModel desk;
    private final VBox begin = new VBox();
    private final VBox course = new VBox();

    HomeView(DeskModel desk, Runnable openFile) {
        this.desk = desk;
        getStyleClass().addAll("reading", "home");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        begin.getStyleClass().add("home-begin");
        course.getStyleClass().add("home-course");
        Button file = Words.button(Say.of("home.own-lesson"), openFile);
        Button batch = Words.button(Say.of("batch.home"), desk::openBatches);
        VBox column =
                new VBox(
                        Words.label("Coldwright", "lesson-title"),
                        Words.label(Say.of("home.what"), "home-what"),
                        begin,
                        batch,
                        course,
                        file,
                        new Sentence(Say.of("home.caution"), "home-caution"));
        if (TrialsView.comesWithTheProgram()) {
            Button trials = Words.button(Say.of("trials.home"), desk::openTrials);
            column.getChildren().add(column.getChildren().indexOf(batch) + 1, trials);
        }
        column.getStyleClass().addAll("column", "home-column");
        StackPane sheet = new StackPane(column);
        sheet.getStyleClass().add("sheet");
        setContent(sheet);
        desk.lessons().addListener((InvalidationListener) value -> fill());
        fill();
    }

    /** Puts the focus where most people begin. */
    void focusFirst() {
        lookupAll(".home-big").stream().findFirst().ifPresent(Node::requestFocus);
    }

    /** Shows how things stand now. */
    void fill() {
        begin.getChildren().clear();
        desk.begunLesson()
                .ifPresent(
                        lesson ->
                                begin.getChildren()
                                        .add(
                                                big(
                                                        Say.of("home.go-on"),
                                                        lesson,
                                                        lesson.inSight().get().title())));
        if (!desk.lessons().isEmpty()) {
            LessonModel first = desk.lessons().get(0);
            begin.getChildren().add(big(Say.of("home.start"), first, first.lesson().title()));
        }
        course.getChildren().clear();
        Map<String, VBox> tracks = new LinkedHashMap<>();
        for (LessonModel lesson : desk.lessons()) {
            tracks.computeIfAbsent(lesson.lesson().track(), this::track)
                    .getChildren()
                    .add(row(lesson));
        }
        course.getChildren().addAll(tracks.values());
        Frames.after(1, this::focusFirst);
    }

    private VBox track(String name) {
        VBox track = new VBox();
        track.getStyleClass().add("home-track");
        if (!name.isEmpty()) {
            track.getChildren().add(Words.label(Typography.of(name), "kicker"));
        }
        return track;
    }

    private Node big(String word, LessonModel lesson, String where) {
        Button button = Words.button(word, () -> desk.open(lesson));
        button.getStyleClass().add("home-big");
        Label title = Words.label(Typography.of(where), "home-where");
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
                        ? Say.of("home.minutes", lesson.lesson().minutes())
                        : Say.of("home.done", String.valueOf(done), String.valueOf(all));
        boolean tell = done > 0 || !lesson.lesson().minutes().isEmpty();
        Label far = Words.label(tell ? state : "", "home-state");
        button.setAccessibleText(title + ". " + far.getText());
        VBox row = new VBox(button, far);
        row.getStyleClass().add("home-row");
        return row;
    }
}
