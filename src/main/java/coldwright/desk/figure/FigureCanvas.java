package coldwright.desk.figure;

import coldwright.desk.figure.model.FigureModel;
import coldwright.desk.figure.model.FigureReadout;
import coldwright.desk.figure.model.FigureReadout.ImagePoint;
import coldwright.desk.messages.Messages;
import coldwright.figure.Drawing;
import coldwright.figure.DrawingDescription;
import coldwright.figure.Figure;
import coldwright.paint.style.PlotArea;

import javafx.scene.AccessibleRole;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;

import java.util.Optional;

/** The image of a figure, with readout and zoom by mouse and keyboard. */
final class FigureCanvas extends ImagePane {
    private static final int TO_AN_END = 1_000;

    private final FigureModel model;
    private final Crosshair crosshair = new Crosshair(glass);
    private Optional<FigureReadout> reading = Optional.empty();
    private Optional<PlotArea> former = Optional.empty();
    private ImagePoint dragStart;
    private ImagePoint pointed;
    private boolean walking;
    private String described = "";

    FigureCanvas(FigureModel model, FigureSettings room, boolean filling) {
        super(room, filling);
        this.model = model;
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleHelp(Messages.of("figure.keys"));
        addEventHandler(MouseEvent.MOUSE_MOVED, event -> point(spot(event)));
        addEventHandler(MouseEvent.MOUSE_EXITED, event -> letGo());
        addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
        addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
        addEventHandler(MouseEvent.MOUSE_RELEASED, this::release);
        addEventHandler(MouseEvent.MOUSE_CLICKED, this::click);
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        focusedProperty()
                .addListener(
                        (value, was, is) -> {
                            if (!is) {
                                letGo();
                            }
                        });
        model.play().moment().addListener(value -> ask());
        model.earlierShown().addListener(value -> ask());
    }

    /** The figure has changed. */
    void changed(boolean otherAxes) {
        if (otherAxes) {
            former = Optional.empty();
            letGo();
        }
        ask();
    }

    void whole() {
        model.whole();
        former = Optional.empty();
        ask();
    }

    void describe(String text) {
        described = text;
        showReadout();
    }

    private void showReadout() {
        setAccessibleText(reading.map(FigureReadout::words).orElseGet(this::momentOrAll));
    }

    private String momentOrAll() {
        boolean apart = model.play().count() > 1 && model.play().moment().get() > 0;
        return apart ? moment(model) + ". " + described : described;
    }

    /** A drawing's current moment, in words. */
    static String moment(FigureModel model) {
        if (model.drawn() != null && model.drawn().exhibit() instanceof Drawing drawing) {
            int at = model.play().moment().get();
            String time = DrawingDescription.time(drawing, at);
            String label = drawing.moments().isEmpty() ? "" : drawing.moments().get(at).label();
            return time.isEmpty() || label.isEmpty() ? time + label : time + ": " + label;
        }
        return "";
    }

    @Override
    Optional<RenderRequest> renderRequest() {
        if (model.drawn() == null) {
            return Optional.empty();
        }
        int moment = model.play().moment().get();
        return Optional.of(new RenderRequest(model.seen(), model.earlier(), moment, former));
    }

    @Override
    void rendered(FigureImage is) {
        former = is.plot();
        if (walking) {
            read(plot().flatMap(plot -> model.walk(plot, 0)));
        } else if (pointed != null) {
            point(pointed);
        } else if (is.exhibit() instanceof Drawing) {
            showReadout();
        }
    }

    private Optional<Figure> figure() {
        return painted()
                .map(FigureImage::exhibit)
                .filter(Figure.class::isInstance)
                .map(Figure.class::cast);
    }

    private ImagePoint spot(MouseEvent event) {
        return new ImagePoint(event.getX() - snappedLeftInset(), event.getY() - snappedTopInset());
    }

    private void point(ImagePoint imagePoint) {
        pointed = imagePoint;
        walking = false;
        Optional<PlotArea> plot = plot();
        read(
                figure().filter(figure -> plot.isPresent())
                        .flatMap(figure -> FigureReadout.near(figure, plot.get(), imagePoint)));
    }

    private void read(Optional<FigureReadout> is) {
        reading = is;
        if (is.isPresent() && plot().isPresent()) {
            crosshair.show(is.get(), plot().get());
        } else {
            crosshair.hide();
        }
        showReadout();
    }

    private void walk(Optional<FigureReadout> is) {
        walking = is.isPresent();
        pointed = null;
        read(is);
    }

    private void letGo() {
        walking = false;
        pointed = null;
        read(Optional.empty());
    }

    private void press(MouseEvent event) {
        event.consume(); // or a scroll pane would take the focus
        requestFocus();
        ImagePoint at = spot(event);
        boolean inside = plot().filter(plot -> plot.area().contains(at.x(), at.y())).isPresent();
        dragStart =
                inside && event.getButton() == MouseButton.PRIMARY && model.canZoom() ? at : null;
    }

    private void drag(MouseEvent event) {
        if (dragStart != null && plot().isPresent()) {
            crosshair.hide();
            crosshair.showPart(dragStart, heldPoint(spot(event), plot().get().area()));
        }
    }

    private static ImagePoint heldPoint(ImagePoint imagePoint, PlotArea.PixelRect pixelRect) {
        return new ImagePoint(
                Math.max(pixelRect.left(), Math.min(pixelRect.right(), imagePoint.x())),
                Math.max(pixelRect.top(), Math.min(pixelRect.bottom(), imagePoint.y())));
    }

    private void release(MouseEvent event) {
        crosshair.hidePart();
        if (dragStart != null && plot().isPresent()) {
            PlotArea plot = plot().get();
            model.zoom(plot, dragStart, heldPoint(spot(event), plot.area()));
            ask();
        }
        dragStart = null;
    }

    private void click(MouseEvent event) {
        if (event.getClickCount() == 2 && event.isStillSincePress()) {
            whole();
        }
    }

    private void key(KeyEvent event) {
        boolean plain = !event.isShortcutDown() && !event.isAltDown();
        if (plain && !plotKey(event)) {
            timeKey(event);
        }
    }

    private void timeKey(KeyEvent event) {
        if (model.play().count() < 2) {
            return;
        }
        int now = model.play().moment().get();
        switch (event.getCode()) {
            case LEFT -> model.play().goTo(now - 1);
            case RIGHT -> model.play().goTo(now + 1);
            case HOME -> model.play().goTo(0);
            case END -> model.play().goTo(model.play().count() - 1);
            case SPACE -> model.play().press();
            default -> {
                return;
            }
        }
        event.consume();
    }

    private boolean plotKey(KeyEvent event) {
        if (plot().isEmpty()) {
            return false;
        }
        PlotArea plot = plot().get();
        switch (event.getCode()) {
            case LEFT -> walk(model.walk(plot, -1));
            case RIGHT -> walk(model.walk(plot, 1));
            case HOME -> walk(model.walk(plot, -TO_AN_END));
            case END -> walk(model.walk(plot, TO_AN_END));
            case UP -> walk(model.change(plot, -1));
            case DOWN -> walk(model.change(plot, 1));
            case PLUS, EQUALS, ADD -> nearer(plot, true);
            case MINUS, SUBTRACT -> nearer(plot, false);
            case DIGIT0, NUMPAD0 -> whole();
            default -> {
                return leave(event.getCode());
            }
        }
        event.consume();
        return true;
    }

    /** Escape ends the readout and isn't consumed. */
    private boolean leave(KeyCode code) {
        if (code == KeyCode.ESCAPE) {
            letGo();
        }
        return false;
    }

    private void nearer(PlotArea plot, boolean nearer) {
        model.zoom(plot, reading, nearer);
        ask();
    }
}
