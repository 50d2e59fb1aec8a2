package coldwright.desk.page;

import coldwright.desk.layout.PageStyles;
import coldwright.desk.layout.WhileShown;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.StepModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.messages.Typography;
import coldwright.desk.model.DeskModel;

import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** All lessons, numbered, by track: a dot for each step, filled once the step is done. */
final class CourseMap extends GridPane {
    private static final double TRACK_EM = 13.5;
    private static final int MOST_COLUMNS = 4;

    private final DeskModel desk;
    private final ObservableValue<? extends Number> emPx;
    private int columns;

    CourseMap(DeskModel desk, ObservableValue<? extends Number> emPx) {
        this.desk = desk;
        this.emPx = emPx;
        getStyleClass().add("home-course");
        widthProperty().addListener(value -> arrange(false));
        WhileShown.changes(this, () -> arrange(false), emPx);
    }

    /** Shows the lessons and their progress as they are now. */
    void fill() {
        Map<String, VBox> tracks = new LinkedHashMap<>();
        int number = 0;
        for (LessonModel lesson : desk.lessons()) {
            number++;
            tracks.computeIfAbsent(lesson.lesson().track(), CourseMap::track)
                    .getChildren()
                    .add(row(number, lesson));
        }
        getChildren().setAll(tracks.values());
        arrange(true);
    }

    /** As many tracks in a row as the width takes, and never three beside one. */
    private void arrange(boolean always) {
        int fit = (int) (getWidth() / (TRACK_EM * emPx.getValue().doubleValue()));
        int now = fit >= MOST_COLUMNS ? MOST_COLUMNS : Math.max(1, Math.min(2, fit));
        if (!always && now == columns) {
            return;
        }
        columns = now;
        ColumnConstraints share = new ColumnConstraints();
        share.setPercentWidth(100.0 / columns);
        getColumnConstraints().setAll(Collections.nCopies(columns, share));
        for (int i = 0; i < getChildren().size(); i++) {
            setConstraints(getChildren().get(i), i % columns, i / columns);
        }
    }

    private static VBox track(String name) {
        VBox track = TextControls.styled(new VBox(), "home-track");
        if (!name.isEmpty()) {
            track.getChildren().add(TextControls.label(Typography.of(name), "kicker"));
        }
        return track;
    }

    private Node row(int number, LessonModel lesson) {
        String title = number + "\u2002" + Typography.of(lesson.lesson().title());
        Button button = ContentsView.entry(title, () -> desk.open(lesson));
        button.getStyleClass().add("home-lesson");
        int done = lesson.stepsDone();
        String state =
                done > 0
                        ? Messages.of("home.done", done, lesson.steps().size())
                        : lesson.lesson().minutes().isEmpty()
                                ? ""
                                : Messages.of("home.minutes", lesson.lesson().minutes());
        button.setAccessibleText(number + ". " + lesson.lesson().title() + ". " + state);
        FlowPane under = TextControls.styled(new FlowPane(), "home-dots");
        for (StepModel step : lesson.steps()) {
            Region dot = TextControls.styled(new Region(), "home-dot");
            dot.pseudoClassStateChanged(PageStyles.DONE, step.done().get());
            under.getChildren().add(dot);
        }
        Label words = TextControls.label(state, "home-state");
        under.getChildren().add(words);
        VBox row = TextControls.styled(new VBox(button, under), "home-row");
        return row;
    }
}
