package coldwright.desk.page;

import coldwright.desk.layout.AfterFrame;
import coldwright.desk.layout.CodeSentence;
import coldwright.desk.layout.PageState;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.model.DeskModel;
import coldwright.desk.prose.Typography;

import javafx.beans.InvalidationListener;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The first page: a picture that answers, where to continue, and the course as a map. */
final class HomeView extends ScrollPane {
    private final DeskModel desk;
    private final FlowPane choices = new FlowPane();
    private final CourseMap course;

    HomeView(DeskModel desk, PageState state, Runnable openFile) {
        this.desk = desk;
        course = new CourseMap(desk, state.emPx());
        getStyleClass().addAll("reading", "home");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        choices.getStyleClass().add("home-begin");
        VBox column =
                new VBox(
                        head(openFile),
                        TextControls.label(Messages.of("home.what"), "home-what"),
                        new LivingPicture(state),
                        choices,
                        course,
                        new CodeSentence(Messages.of("home.caution"), "home-caution"));
        column.getStyleClass().addAll("column", "home-column");
        StackPane sheet = new StackPane(column);
        sheet.getStyleClass().add("sheet");
        setContent(sheet);
        desk.lessons().addListener((InvalidationListener) value -> fill());
        fill();
    }

    private Node head(Runnable openFile) {
        Label title = TextControls.label("Coldwright", "lesson-title");
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        Button smaller = TextControls.button(Messages.of("type.smaller"), desk.typeSize()::smaller);
        Button larger = TextControls.button(Messages.of("type.larger"), desk.typeSize()::larger);
        FlowPane words =
                new FlowPane(
                        smaller,
                        larger,
                        TextControls.button(Messages.of("settings"), desk::openSettings),
                        TextControls.button(Messages.of("home.own-lesson"), openFile));
        words.getStyleClass().add("home-words");
        words.setAlignment(Pos.BASELINE_RIGHT);
        HBox head = new HBox(title, words);
        HBox.setHgrow(words, Priority.ALWAYS);
        head.setAlignment(Pos.BASELINE_LEFT);
        return head;
    }

    /** Focuses the button that most people begin with. */
    void focusFirst() {
        lookupAll(".home-big").stream().findFirst().ifPresent(Node::requestFocus);
    }

    /** Fills the page from the current state. */
    void fill() {
        choices.getChildren().clear();
        desk.startedLesson()
                .ifPresent(
                        lesson ->
                                choices.getChildren()
                                        .add(
                                                big(
                                                        Messages.of("home.go-on"),
                                                        lesson,
                                                        where(lesson))));
        if (choices.getChildren().isEmpty() && !desk.lessons().isEmpty()) {
            LessonModel first = desk.lessons().get(0);
            choices.getChildren()
                    .add(big(Messages.of("home.start"), first, first.lesson().title()));
        }
        choices.getChildren()
                .add(TextControls.button(Messages.of("batch.home"), desk::openBatches));
        if (KitchenTrialsView.comesWithTheProgram()) {
            choices.getChildren()
                    .add(TextControls.button(Messages.of("trials.home"), desk::openTrials));
        }
        course.fill();
        AfterFrame.after(1, this::focusFirst);
    }

    private String where(LessonModel lesson) {
        return Messages.of(
                "home.where",
                String.valueOf(desk.lessons().indexOf(lesson) + 1),
                lesson.lesson().title(),
                String.valueOf(lesson.inSight().get().number()),
                lesson.inSight().get().title());
    }

    private Node big(String word, LessonModel lesson, String where) {
        Button button = TextControls.button(word, () -> desk.open(lesson));
        button.getStyleClass().add("home-big");
        Label title = TextControls.label(Typography.of(where), "home-where");
        VBox both = new VBox(button, title);
        both.getStyleClass().add("home-choice");
        return both;
    }
}
