package coldwright.desk.batch;

import coldwright.batch.BatchAnalysis;
import coldwright.desk.batch.model.FreezeSchedule;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;

import javafx.beans.value.ObservableValue;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

import java.time.LocalTime;
import java.util.List;

/** The freeze plan on a clock from a start time, with instructions in words. */
final class FreezeClockView extends FlowPane {
    private static final double WORDS_EM = 24;

    private final ObservableValue<? extends Number> emPx;
    private final FreezeClockFace face = FreezeClockFace.withTimes();
    private final VBox words = new VBox();
    private LocalTime start = LocalTime.now();
    private BatchAnalysis all;

    FreezeClockView(ObservableValue<? extends Number> emPx) {
        this.emPx = emPx;
        getStyleClass().add("brew-clock");
        words.getStyleClass().add("brew-clock-words");
        face.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        getChildren().addAll(face, words);
        // the words are as wide as the page lets them be, and wrap
        setMinWidth(0);
        widthProperty().addListener((value, was, is) -> fit());
        emPx.addListener((value, was, is) -> draw());
    }

    /** Shows another plan with the same start time. */
    void show(BatchAnalysis is) {
        all = is;
        draw();
    }

    private void draw() {
        if (all == null) {
            return;
        }
        FreezeSchedule plan = FreezeSchedule.of(all, start);
        double em = emPx.getValue().doubleValue();
        face.show(plan, em);
        fit();
        List<String> sentences = plan.words(all);
        String told = String.join(" ", sentences);
        face.setAccessibleText(Messages.of("batch.clock.picture", plan.at(0), told));
        words.getChildren().clear();
        sentences.forEach(one -> words.getChildren().add(TextControls.label(one, "brew-fact")));
        words.getChildren()
                .add(new HBox(TextControls.button(Messages.of("batch.clock.from"), this::now)));
    }

    private void fit() {
        double most = WORDS_EM * emPx.getValue().doubleValue();
        words.setPrefWidth(getWidth() > 0 ? Math.min(most, getWidth()) : most);
    }

    private void now() {
        start = LocalTime.now();
        draw();
    }
}
