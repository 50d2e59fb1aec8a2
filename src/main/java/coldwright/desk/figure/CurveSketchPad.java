package coldwright.desk.figure;

import coldwright.desk.figure.model.CurveSketch;
import coldwright.desk.layout.WhileShown;
import coldwright.desk.lesson.model.PredictionModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.figure.TypesetNumber;
import coldwright.lesson.ExpectedAnswer;
import coldwright.paint.style.PlotArea;
import coldwright.workbook.work.LearnerAnswer;

import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polyline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Empty axes on which a curve is drawn before the run, with the mouse or the arrow keys. */
public final class CurveSketchPad extends VBox {
    private final PredictionModel model;
    private final CurveSketch sketch;
    private final ExpectedAnswer.Curve axes;
    private final SketchAxes sketchAxes;
    private final Polyline line = TextControls.styled(new Polyline(), "sketch-line");
    private final Circle here = TextControls.styled(new Circle(), "sketch-here");
    private int place = CurveSketch.PLACES / 2;
    private LearnerAnswer.Point last;

    /** Makes a pad for a question that asks for a curve on these axes. */
    public CurveSketchPad(PredictionModel model, ExpectedAnswer.Curve axes, FigureSettings room) {
        this.model = model;
        this.axes = axes;
        this.sketch = model.sketch().orElseThrow();
        this.sketchAxes = new SketchAxes(room);
        getStyleClass().add("sketch");
        here.radiusProperty().bind(room.emPx().multiply(0.28));
        line.setManaged(false);
        here.setManaged(false);
        sketchAxes.glass.getChildren().addAll(line, here);
        sketchAxes.disableProperty().bind(model.revealed());
        Button clear = TextControls.command("figure.clear", this::clear);
        clear.getStyleClass().add("quiet-word");
        clear.disableProperty().bind(model.revealed());
        getChildren()
                .addAll(TextControls.label(Messages.of("figure.draw"), "note"), sketchAxes, clear);
        WhileShown.follow(this, this::show, sketch.points());
        sketchAxes.focusedProperty().addListener(value -> show());
    }

    private void clear() {
        sketch.clear();
        sketchAxes.requestFocus();
    }

    private void show() {
        here.setVisible(false);
        sketchAxes
                .plot()
                .ifPresent(
                        plot -> {
                            List<Double> ends = new ArrayList<>();
                            for (LearnerAnswer.Point point : sketch.points()) {
                                ends.add(plot.xPx(point.x()));
                                ends.add(plot.yPx(point.y()));
                            }
                            line.getPoints().setAll(ends);
                            placeDot(plot);
                        });
        sketchAxes.setAccessibleText(describe());
    }

    private void placeDot(PlotArea plot) {
        OptionalDouble value = sketch.valueAt(place);
        double y = value.orElse((axes.upright().from() + axes.upright().to()) / 2);
        here.setCenterX(plot.xPx(sketch.xOf(place)));
        here.setCenterY(plot.yPx(y));
        here.setVisible(sketchAxes.isFocused() && !model.revealed().get());
    }

    /** The current position and value, and the whole curve so far. */
    private String describe() {
        String at = number(sketch.xOf(place), axes.level());
        OptionalDouble value = sketch.valueAt(place);
        String here =
                value.isPresent()
                        ? at + ", " + number(value.getAsDouble(), axes.upright())
                        : at + ", " + Messages.of("figure.nothing-drawn");
        Optional<String> all = sketch.description();
        return all.map(words -> here + ". " + words).orElse(here);
    }

    private static String number(double value, ExpectedAnswer.Scale scale) {
        String unit = scale.unit().isBlank() ? "" : " " + scale.unit();
        return scale.label()
                + " "
                + TypesetNumber.plain(value, (scale.to() - scale.from()) / 10)
                + unit;
    }

    private void key(KeyEvent event) {
        if (event.isShortcutDown() || event.isAltDown()) {
            return;
        }
        switch (event.getCode()) {
            case LEFT -> place = Math.max(0, place - 1);
            case RIGHT -> place = Math.min(CurveSketch.PLACES, place + 1);
            case HOME -> place = 0;
            case END -> place = CurveSketch.PLACES;
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

    private Optional<LearnerAnswer.Point> at(MouseEvent event) {
        return sketchAxes
                .plot()
                .map(
                        plot ->
                                new LearnerAnswer.Point(
                                        plot.xAt(event.getX() - sketchAxes.snappedLeftInset()),
                                        plot.yAt(event.getY() - sketchAxes.snappedTopInset())));
    }

    private void press(MouseEvent event) {
        event.consume(); // or a scroll pane would take the focus
        sketchAxes.requestFocus();
        at(event).ifPresent(point -> stroke(point, point));
    }

    private void drag(MouseEvent event) {
        if (last != null) {
            at(event).ifPresent(point -> stroke(last, point));
        }
    }

    private void stroke(LearnerAnswer.Point from, LearnerAnswer.Point to) {
        last = to;
        sketch.draw(from, to);
    }

    private final class SketchAxes extends ImagePane {
        SketchAxes(FigureSettings room) {
            super(room, false);
            getStyleClass().add("sketch-pad");
            setFocusTraversable(true);
            setAccessibleRole(AccessibleRole.SLIDER);
            setAccessibleHelp(Messages.of("figure.draw"));
            addEventHandler(KeyEvent.KEY_PRESSED, CurveSketchPad.this::key);
            addEventHandler(MouseEvent.MOUSE_PRESSED, CurveSketchPad.this::press);
            addEventHandler(MouseEvent.MOUSE_DRAGGED, CurveSketchPad.this::drag);
            addEventHandler(MouseEvent.MOUSE_RELEASED, event -> last = null);
        }

        @Override
        Optional<RenderRequest> renderRequest() {
            return Optional.of(
                    new RenderRequest(sketch.paper(), Optional.empty(), 0, Optional.empty()));
        }

        @Override
        void rendered(FigureImage is) {
            show();
        }
    }
}
