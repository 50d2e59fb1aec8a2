package coldwright.desk.plate;

import coldwright.desk.model.ForecastModel;
import coldwright.desk.model.Sketch;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;
import coldwright.figure.Digits;
import coldwright.lesson.Answer;
import coldwright.paint.Plot;
import coldwright.workbook.work.Said;

import javafx.beans.Observable;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polyline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Empty axes on which a curve is drawn before the run, with the mouse or with the arrow keys. */
public final class SketchPad extends VBox {
    private final ForecastModel model;
    private final Sketch sketch;
    private final Answer.Curve axes;
    private final Pad pad;
    private final Polyline line = new Polyline();
    private final Circle here = new Circle();
    private int place = Sketch.PLACES / 2;
    private Said.Point last;

    /**
     * Makes a pad.
     *
     * @param model a question that asks for a curve
     * @param axes its axes
     * @param room what plates share
     */
    public SketchPad(ForecastModel model, Answer.Curve axes, PlateRoom room) {
        this.model = model;
        this.axes = axes;
        this.sketch = model.sketch().orElseThrow();
        this.pad = new Pad(room);
        getStyleClass().add("sketch");
        line.getStyleClass().add("sketch-line");
        here.getStyleClass().add("sketch-here");
        here.radiusProperty().bind(room.emPx().multiply(0.28));
        line.setManaged(false);
        here.setManaged(false);
        pad.glass.getChildren().addAll(line, here);
        pad.disableProperty().bind(model.revealed());
        Button clear = Words.button(Say.of("plate.clear"), this::clear);
        clear.getStyleClass().add("quiet-word");
        clear.disableProperty().bind(model.revealed());
        getChildren().addAll(Words.label(Say.of("plate.draw"), "note"), pad, clear);
        sketch.points().addListener((Observable value) -> show());
        pad.focusedProperty().addListener(value -> show());
    }

    private void clear() {
        sketch.clear();
        pad.requestFocus();
    }

    private void show() {
        here.setVisible(false);
        pad.plot()
                .ifPresent(
                        plot -> {
                            List<Double> ends = new ArrayList<>();
                            for (Said.Point point : sketch.points()) {
                                ends.add(plot.xPx(point.x()));
                                ends.add(plot.yPx(point.y()));
                            }
                            line.getPoints().setAll(ends);
                            placeDot(plot);
                        });
        pad.setAccessibleText(told());
    }

    private void placeDot(Plot plot) {
        OptionalDouble value = sketch.valueAt(place);
        double y = value.orElse((axes.upright().from() + axes.upright().to()) / 2);
        here.setCenterX(plot.xPx(sketch.xOf(place)));
        here.setCenterY(plot.yPx(y));
        here.setVisible(pad.isFocused() && !model.revealed().get());
    }

    /** The place and its value, and the whole curve so far. */
    private String told() {
        String at = number(sketch.xOf(place), axes.level());
        OptionalDouble value = sketch.valueAt(place);
        String here =
                value.isPresent()
                        ? at + ", " + number(value.getAsDouble(), axes.upright())
                        : at + ", " + Say.of("plate.nothing-drawn");
        Optional<String> all = sketch.said();
        return all.map(words -> here + ". " + words).orElse(here);
    }

    private static String number(double value, Answer.Scale scale) {
        String unit = scale.unit().isBlank() ? "" : " " + scale.unit();
        return scale.label() + " " + Digits.spoken(value, (scale.to() - scale.from()) / 10) + unit;
    }

    private void key(KeyEvent event) {
        if (event.isShortcutDown() || event.isAltDown()) {
            return;
        }
        KeyCode code = event.getCode();
        switch (code) {
            case LEFT, RIGHT ->
                    place =
                            Math.max(
                                    0,
                                    Math.min(
                                            Sketch.PLACES,
                                            place + (code == KeyCode.LEFT ? -1 : 1)));
            case HOME -> place = 0;
            case END -> place = Sketch.PLACES;
            case UP -> sketch.nudge(place, 1);
            case DOWN -> sketch.nudge(place, -1);
            case SPACE -> sketch.nudge(place, 0);
            default -> {
                return;
            }
        }
        event.consume();
        show();
    }

    private Optional<Said.Point> at(MouseEvent event) {
        return pad.plot()
                .map(
                        plot ->
                                new Said.Point(
                                        plot.xAt(event.getX() - pad.snappedLeftInset()),
                                        plot.yAt(event.getY() - pad.snappedTopInset())));
    }

    private void press(MouseEvent event) {
        event.consume(); // or a pane that scrolls would take the focus
        pad.requestFocus();
        at(event).ifPresent(point -> stroke(point, point));
    }

    private void drag(MouseEvent event) {
        if (last != null) {
            at(event).ifPresent(point -> stroke(last, point));
        }
    }

    private void stroke(Said.Point from, Said.Point to) {
        last = to;
        sketch.draw(from, to);
    }

    /** The empty axes. */
    private final class Pad extends Paper {
        Pad(PlateRoom room) {
            super(room, false);
            getStyleClass().add("sketch-pad");
            setFocusTraversable(true);
            setAccessibleRole(AccessibleRole.SLIDER);
            setAccessibleHelp(Say.of("plate.draw"));
            addEventHandler(KeyEvent.KEY_PRESSED, SketchPad.this::key);
            addEventHandler(MouseEvent.MOUSE_PRESSED, SketchPad.this::press);
            addEventHandler(MouseEvent.MOUSE_DRAGGED, SketchPad.this::drag);
            addEventHandler(MouseEvent.MOUSE_RELEASED, event -> last = null);
        }

        @Override
        Optional<Sitting> sitting() {
            return Optional.of(new Sitting(sketch.paper(), Optional.empty(), 0, Optional.empty()));
        }

        @Override
        void came(Painted is) {
            show();
        }
    }
}
