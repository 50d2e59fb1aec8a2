package coldwright.desk.batch;

import coldwright.desk.batch.model.FreezeSchedule;
import coldwright.desk.messages.TextControls;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Arc;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;

/**
 * A clock face with a freeze plan: the batch goes in at the top, a full band runs to the end, a
 * pale one shows the range for good or poor contact, and dots mark when to shake.
 */
final class FreezeClockFace extends Pane {
    private static final int QUARTERS = 4;
    private static final int TICKS = 12;

    private final double sideEm;
    private final double radiusEm;
    private final boolean times;
    private double em;
    private double roundMinutes;

    private FreezeClockFace(double sideEm, double radiusEm, boolean times) {
        this.sideEm = sideEm;
        this.radiusEm = radiusEm;
        this.times = times;
    }

    /** A large face with times. */
    static FreezeClockFace withTimes() {
        return new FreezeClockFace(15, 5.2, true);
    }

    /** A small face without times. */
    static FreezeClockFace small(double sideEm) {
        return new FreezeClockFace(sideEm, sideEm / 2 - 0.1, false);
    }

    /** Shows a plan. */
    void show(FreezeSchedule plan, double typePx) {
        em = typePx;
        roundMinutes = plan.roundMinutes();
        setPrefSize(sideEm * em, sideEm * em);
        setMinSize(sideEm * em, sideEm * em);
        setMaxSize(sideEm * em, sideEm * em);
        getChildren().setAll(SmallShapes.as(new Circle(mid(), mid(), radiusEm * em), "clock-rim"));
        for (int i = 0; i < TICKS; i++) {
            double length = (i % (TICKS / QUARTERS) == 0 ? 0.115 : 0.058) * radiusEm;
            add(ray(360.0 * i / TICKS, radiusEm - length, "clock-tick"));
        }
        if (Double.isFinite(plan.doneMinutes())) {
            double likely = degrees(plan, plan.doneMinutes());
            double most = degrees(plan, Double.isFinite(plan.most()) ? plan.most() : 1e9);
            add(band(0, likely, "clock-likely"));
            add(band(degrees(plan, plan.least()), most, "clock-range"));
            add(ray(likely, 0, "clock-hand"));
        }
        for (double minute : plan.shakeAtMinutes()) {
            double angle = Math.toRadians(degrees(plan, minute));
            double away = (radiusEm - 2 * bandEm()) * em;
            double x = mid() + away * Math.sin(angle);
            double y = mid() - away * Math.cos(angle);
            add(SmallShapes.as(new Circle(x, y, 0.054 * radiusEm * em), "clock-shake"));
        }
        for (int i = 0; times && i < QUARTERS; i++) {
            add(time(plan, i));
        }
    }

    /** Adds when another plan is done, on the turn of the one shown. */
    void beside(FreezeSchedule other) {
        if (Double.isFinite(other.doneMinutes())) {
            add(ray(Math.min(359.9, 360 * other.doneMinutes() / roundMinutes), 0, "small-other"));
        }
    }

    private void add(Node node) {
        getChildren().add(node);
    }

    private double mid() {
        return sideEm * em / 2;
    }

    private double bandEm() {
        return 0.173 * radiusEm;
    }

    private static double degrees(FreezeSchedule plan, double minute) {
        return Math.min(359.9, 360 * minute / plan.roundMinutes());
    }

    private Node ray(double degrees, double fromEm, String look) {
        double angle = Math.toRadians(degrees);
        double from = fromEm * em;
        double to = radiusEm * em;
        return SmallShapes.as(
                new Line(
                        mid() + from * Math.sin(angle),
                        mid() - from * Math.cos(angle),
                        mid() + to * Math.sin(angle),
                        mid() - to * Math.cos(angle)),
                look);
    }

    private Node band(double from, double to, String look) {
        double radius = (radiusEm - bandEm()) * em;
        Arc arc = new Arc(mid(), mid(), radius, radius, 90 - from, from - to);
        arc.setType(ArcType.OPEN);
        arc.setStrokeWidth(bandEm() * em);
        return SmallShapes.as(arc, look);
    }

    private Node time(FreezeSchedule plan, int quarter) {
        Label time =
                TextControls.label(plan.at(plan.roundMinutes() * quarter / QUARTERS), "brew-why");
        double angle = Math.toRadians(360.0 * quarter / QUARTERS);
        double away = (radiusEm + (quarter % 2 == 0 ? 0.9 : 1.6)) * em;
        double x = mid() + away * Math.sin(angle);
        double y = mid() - away * Math.cos(angle);
        time.layoutXProperty().bind(time.widthProperty().divide(-2).add(x));
        time.layoutYProperty().bind(time.heightProperty().divide(-2).add(y));
        return time;
    }
}
