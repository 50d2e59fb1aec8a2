package coldwright.desk.brew;

import coldwright.batch.Reckoning;
import coldwright.desk.brew.model.ClockPlan;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;

import javafx.beans.value.ObservableValue;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Arc;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Shape;

import java.time.LocalTime;

/**
 * The freeze plan on a round clock: the batch goes in at the top, a full band runs to when it is
 * done, a pale one over what the contact leaves open, and a dot says shake.
 */
final class ClockView extends FlowPane {
    private static final double FACE_EM = 15;
    private static final double RADIUS_EM = 5.2;
    private static final double BAND_EM = 0.9;
    private static final double WORDS_EM = 24;
    private static final int QUARTERS = 4;
    private static final int TICKS = 12;

    private final ObservableValue<? extends Number> emPx;
    private final Pane face = new Pane();
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
        face.setPrefSize(FACE_EM * em, FACE_EM * em);
        face.setMinSize(FACE_EM * em, FACE_EM * em);
        words.setPrefWidth(WORDS_EM * em);
        face.getChildren().setAll(looks(new Circle(mid(em), mid(em), RADIUS_EM * em), "clock-rim"));
        for (int i = 0; i < TICKS; i++) {
            double inner = i % (TICKS / QUARTERS) == 0 ? RADIUS_EM - 0.6 : RADIUS_EM - 0.3;
            face.getChildren().add(ray(em, 360.0 * i / TICKS, inner, "clock-tick"));
        }
        if (Double.isFinite(plan.doneMinutes())) {
            double likely = degrees(plan, plan.doneMinutes());
            double least = degrees(plan, plan.least());
            double most = degrees(plan, Double.isFinite(plan.most()) ? plan.most() : 1e9);
            face.getChildren().add(band(em, 0, likely, "clock-likely"));
            face.getChildren().add(band(em, least, most, "clock-range"));
            face.getChildren().add(ray(em, likely, 0, "clock-hand"));
        }
        for (double minute : plan.shakeAtMinutes()) {
            double angle = Math.toRadians(degrees(plan, minute));
            double away = (RADIUS_EM - 2 * BAND_EM) * em;
            face.getChildren()
                    .add(
                            looks(
                                    new Circle(
                                            mid(em) + away * Math.sin(angle),
                                            mid(em) - away * Math.cos(angle),
                                            0.28 * em),
                                    "clock-shake"));
        }
        for (int i = 0; i < QUARTERS; i++) {
            face.getChildren().add(time(plan, em, i));
        }
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

    private static double mid(double em) {
        return FACE_EM * em / 2;
    }

    private static double degrees(ClockPlan plan, double minute) {
        return Math.min(359.9, 360 * minute / plan.roundMinutes());
    }

    private static Node ray(double em, double degrees, double fromEm, String look) {
        double angle = Math.toRadians(degrees);
        double from = fromEm * em;
        double to = RADIUS_EM * em;
        return looks(
                new Line(
                        mid(em) + from * Math.sin(angle),
                        mid(em) - from * Math.cos(angle),
                        mid(em) + to * Math.sin(angle),
                        mid(em) - to * Math.cos(angle)),
                look);
    }

    private static Node band(double em, double from, double to, String look) {
        double radius = (RADIUS_EM - BAND_EM) * em;
        Arc arc = new Arc(mid(em), mid(em), radius, radius, 90 - from, from - to);
        arc.setType(ArcType.OPEN);
        arc.setStrokeWidth(BAND_EM * em);
        return looks(arc, look);
    }

    private static Node time(ClockPlan plan, double em, int quarter) {
        Label time = Words.label(plan.at(plan.roundMinutes() * quarter / QUARTERS), "brew-why");
        double angle = Math.toRadians(360.0 * quarter / QUARTERS);
        double away = (RADIUS_EM + (quarter % 2 == 0 ? 0.9 : 1.6)) * em;
        double x = mid(em) + away * Math.sin(angle);
        double y = mid(em) - away * Math.cos(angle);
        time.layoutXProperty().bind(time.widthProperty().divide(-2).add(x));
        time.layoutYProperty().bind(time.heightProperty().divide(-2).add(y));
        return time;
    }

    private static Node looks(Shape shape, String look) {
        shape.getStyleClass().add(look);
        return shape;
    }
}
