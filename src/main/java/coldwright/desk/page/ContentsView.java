package coldwright.desk.page;

import coldwright.desk.layout.AfterFrame;
import coldwright.desk.layout.PageStyles;
import coldwright.desk.layout.WhileShown;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.StepModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.messages.Typography;
import coldwright.desk.model.DeskModel;
import coldwright.desk.model.PreferencesModel;
import coldwright.desk.model.ShownPage;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ScrollPane.ScrollBarPolicy;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

import java.util.List;
import java.util.function.Consumer;

/** The list of lessons and steps with their progress, and the buttons for the whole window. */
final class ContentsView extends BorderPane {
    private final DeskModel desk;
    private final Consumer<StepModel> goTo;
    private final VBox list = TextControls.styled(new VBox(), "contents-list");
    private final ScrollPane scroll = new ScrollPane();

    ContentsView(
            DeskModel desk,
            PreferencesModel settings,
            Consumer<StepModel> goTo,
            Runnable openFile) {
        this.desk = desk;
        this.goTo = goTo;
        getStyleClass().add("contents");
        Button name = entry("Coldwright", desk::goHome);
        name.setAccessibleText(String.join(", ", "Coldwright", Messages.of("home")));
        name.getStyleClass().add("name");
        scroll.setContent(list);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        setTop(name);
        setCenter(scroll);
        setBottom(foot(settings, openFile));
        list.addEventFilter(KeyEvent.KEY_PRESSED, this::arrows);
        WhileShown.follow(this, this::fill, desk.lessons(), desk.open(), desk.place());
    }

    private Node foot(PreferencesModel type, Runnable openFile) {
        Button batch = TextControls.command("batch.page", desk::openBatches);
        Button glossary = TextControls.command("glossary", () -> desk.openGlossary(""));
        Button settings = TextControls.command("settings", desk::openSettings);
        Button open = TextControls.command("open-file", openFile);
        Button smaller = TextControls.command("type.smaller", type::smallerType);
        Button larger = TextControls.command("type.larger", type::largerType);
        VBox foot =
                TextControls.styled(
                        new VBox(batch, glossary, settings, open, smaller, larger),
                        "contents-foot");
        foot.getChildren().forEach(word -> word.getStyleClass().add("quiet-word"));
        return foot;
    }

    private void fill() {
        list.getChildren().clear();
        String track = "";
        for (LessonModel lesson : desk.lessons()) {
            if (!lesson.lesson().track().equals(track)) {
                track = lesson.lesson().track();
                list.getChildren().add(TextControls.label(track, "contents-track"));
            }
            boolean open = lesson == desk.open().get() && desk.place().get() == ShownPage.LESSON;
            Button title = entry(Typography.of(lesson.lesson().title()), () -> desk.open(lesson));
            title.getStyleClass().add("contents-lesson");
            list.getChildren().add(title);
            if (open) {
                AfterFrame.after(1, () -> scrollTo(title));
                lesson.steps().forEach(step -> list.getChildren().add(stepRow(lesson, step)));
            }
        }
    }

    private Node stepRow(LessonModel lesson, StepModel step) {
        Label number =
                TextControls.styled(new Label(String.valueOf(step.number())), "contents-number");
        String name = Typography.of(step.title());
        Button title = entry(name, () -> goTo.accept(step));
        HBox.setHgrow(title, Priority.ALWAYS);
        HBox row = TextControls.styled(new HBox(number, title), "contents-row");
        Runnable refresh =
                () -> {
                    boolean here = lesson.inSight().get() == step;
                    boolean done = step.done().get();
                    row.pseudoClassStateChanged(PageStyles.HERE, here);
                    row.pseudoClassStateChanged(PageStyles.DONE, done);
                    title.setFocusTraversable(here);
                    title.setText(name + (done ? " – " + Messages.of("step.done") : ""));
                    title.setAccessibleText(
                            Messages.of("step.number", step.number()) + ", " + title.getText());
                };
        WhileShown.follow(row, refresh, lesson.inSight(), step.done());
        return row;
    }

    /** A button that looks like a line of text, which wraps. */
    static Button entry(String words, Runnable action) {
        Button entry = new Button(words);
        entry.setWrapText(true);
        entry.setMaxWidth(Double.MAX_VALUE);
        entry.setMinHeight(USE_PREF_SIZE);
        entry.getStyleClass().setAll("entry");
        entry.setOnAction(event -> action.run());
        return entry;
    }

    /** Focuses the step in sight. */
    void focusHere() {
        list.lookupAll(".entry").stream()
                .filter(Node::isFocusTraversable)
                .reduce((first, second) -> second)
                .ifPresent(this::focus);
    }

    private void focus(Node entry) {
        entry.requestFocus();
        scrollTo(entry);
    }

    /** Scrolls an entry close to the top. */
    private void scrollTo(Node entry) {
        applyCss();
        layout();
        double y = list.sceneToLocal(entry.localToScene(0, 0)).getY();
        TextControls.scroll(scroll, y - scroll.getViewportBounds().getHeight() / 8);
    }

    /** Up and down move through the list; Tab leaves it. */
    private void arrows(KeyEvent event) {
        int by =
                switch (event.getCode()) {
                    case UP -> -1;
                    case DOWN -> 1;
                    default -> 0;
                };
        List<Node> entries = List.copyOf(list.lookupAll(".entry"));
        int at = entries.indexOf(event.getTarget());
        int to = at + by;
        if (by != 0 && at >= 0) {
            event.consume();
            if (to >= 0 && to < entries.size()) {
                focus(entries.get(to));
            }
        }
    }
}
