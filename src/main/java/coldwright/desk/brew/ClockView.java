package coldwright.desk.brew;

import coldwright.batch.Reckoning;
import coldwright.desk.brew.model.ClockPlan;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;

import javafx.beans.value.ObservableValue;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

import java.time.LocalTime;

/** The freeze plan on a clock from a given moment on, with what to do when in words. */
final class ClockView extends FlowPane {
    private static final double WORDS_EM = 24;

    private final ObservableValue<? extends Number> emPx;
    private final ClockFace face = ClockFace.withTimes();
    private final VBox words = new VBox();
    private LocalTime start = LocalTime.now();
    private Reckoning all;

    ClockView(ObservableValue<? extends Number> emPx) {
        this.emPx = emPx;
        getStyleClass().add("brew-clock");
        words.getStyleClass().add("brew-clock-words");
        face.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        getChildren().addAll(face, words);
        emPx.addListener((value, was, is) -> draw());
    }

    /** Shows another plan from the moment it began with. */
    void show(Reckoning is) {
        all = is;
        draw();
    }

    private void draw() {
        if (all == null) {
            return;
        }
        ClockPlan plan = ClockPlan.of(all, start);
        double em = emPx.getValue().doubleValue();
        face.show(plan, em);
        words.setPrefWidth(WORDS_EM * em);
        String told = String.join(" ", plan.words());
        face.setAccessibleText(Say.of("batch.clock.picture", plan.at(0), told));
        words.getChildren().clear();
        plan.words().forEach(one -> words.getChildren().add(Words.label(one, "brew-fact")));
        words.getChildren().add(new HBox(Words.button(Say.of("batch.clock.from"), this::now)));
    }

    private void now() {
        start = LocalTime.now();
        draw();
    }
}
