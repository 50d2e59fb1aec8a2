package coldwright.desk.page;

import coldwright.desk.layout.AfterFrame;
import coldwright.desk.layout.CodeSentence;
import coldwright.desk.layout.ScrollPage;
import coldwright.desk.layout.WhileShown;
import coldwright.desk.lesson.PageState;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.messages.Typography;
import coldwright.desk.model.DeskModel;
import coldwright.desk.model.PreferencesModel;

import javafx.application.Platform;
import javafx.beans.property.DoubleProperty;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The first page: a picture that answers, where to continue, and the course as a map. */
final class HomeView extends ScrollPage {
    /** From this width of the page on, in ems, the buttons are beside the title. */
    private static final double BUTTONS_BESIDE_EM = 52;

    private final DeskModel desk;
    private final FlowPane choices = TextControls.styled(new FlowPane(), "home-start");
    private final CourseMap course;
    private boolean fillDue;

    HomeView(DeskModel desk, PageState state, Runnable openFile) {
        super("home");
        this.desk = desk;
        course = new CourseMap(desk, state.emPx());
        add(
                head(state.settings(), state.emPx(), openFile),
                TextControls.label(Messages.of("home.what"), "home-what"),
                new LivingPicture(state),
                choices,
                course,
                new CodeSentence(Messages.of("home.caution"), "home-caution"));
        WhileShown.follow(this, this::fillSoon, desk.lessons(), desk.openLessons().progress());
        AfterFrame.after(1, this::focusFirst);
    }

    /** The title with the buttons beside it, or below it where the type is large. */
    private Node head(PreferencesModel type, DoubleProperty emPx, Runnable openFile) {
        Label title = TextControls.label("Coldwright", "lesson-title");
        title.setMinWidth(USE_PREF_SIZE);
        FlowPane buttons =
                new FlowPane(
                        TextControls.command("type.smaller", type::smallerType),
                        TextControls.command("type.larger", type::largerType),
                        TextControls.command("glossary", () -> desk.openGlossary("")),
                        TextControls.command("settings", desk::openSettings),
                        TextControls.command("home.own-lesson", openFile));
        buttons.getStyleClass().add("home-words");
        HBox.setHgrow(buttons, Priority.ALWAYS);
        HBox head = new HBox(title, buttons);
        head.setAlignment(Pos.BASELINE_LEFT);
        VBox whole = new VBox(head);
        WhileShown.follow(
                whole,
                () -> {
                    boolean beside = getWidth() >= BUTTONS_BESIDE_EM * emPx.get();
                    buttons.setAlignment(beside ? Pos.BASELINE_RIGHT : Pos.BASELINE_LEFT);
                    Pane place = beside ? head : whole;
                    if (!place.getChildren().contains(buttons)) {
                        (beside ? whole : head).getChildren().remove(buttons);
                        place.getChildren().add(buttons);
                    }
                },
                widthProperty(),
                emPx);
        return whole;
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
        choices.getChildren().clear();
        desk.openLessons()
                .started()
                .ifPresent(lesson -> choose(Messages.of("home.go-on"), lesson, where(lesson)));
        if (choices.getChildren().isEmpty() && !desk.lessons().isEmpty()) {
            LessonModel first = desk.lessons().get(0);
            choose(Messages.of("home.start"), first, first.lesson().title());
        }
        choices.getChildren().add(TextControls.command("batch.home", desk::openBatches));
        if (KitchenTrialsView.comesWithTheProgram()) {
            choices.getChildren().add(TextControls.command("trials.home", desk::openTrials));
        }
        course.fill();
        if (getScene() != null && getScene().getFocusOwner() == null) {
            AfterFrame.after(1, this::focusFirst);
        }
    }

    private String where(LessonModel lesson) {
        return Messages.of(
                "home.where",
                desk.lessons().indexOf(lesson) + 1,
                lesson.lesson().title(),
                lesson.inSight().get().number(),
                lesson.inSight().get().title());
    }

    private void choose(String word, LessonModel lesson, String where) {
        Button button = TextControls.button(word, () -> desk.open(lesson));
        button.getStyleClass().add("home-big");
        VBox both =
                TextControls.styled(
                        new VBox(button, TextControls.label(Typography.of(where), "home-where")),
                        "home-choice");
        choices.getChildren().add(both);
    }
}
