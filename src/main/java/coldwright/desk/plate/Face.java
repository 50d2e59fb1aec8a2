package coldwright.desk.plate;

import coldwright.desk.model.PlateModel;
import coldwright.desk.model.Reading;
import coldwright.desk.model.Reading.Spot;
import coldwright.desk.say.Say;
import coldwright.figure.Drawing;
import coldwright.figure.Figure;
import coldwright.figure.FigureText;
import coldwright.paint.Plot;

import javafx.scene.AccessibleRole;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;

import java.util.Optional;

/** The painting of a plate: its values are read and its parts looked at with mouse and keyboard. */
final class Face extends Paper {
    private static final int TO_AN_END = 1_000;

    private final PlateModel model;
    private final Cross cross = new Cross(glass);
    private Optional<Reading> reading = Optional.empty();
    private Optional<Plot> former = Optional.empty();
    private Spot begun;
    private Spot pointed;
    private boolean walking;
    private String described = "";

    Face(PlateModel model, PlateRoom room, boolean filling) {
        super(room, filling);
        this.model = model;
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleHelp(Say.of("plate.keys"));
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

    /** Sees all of the figure again. */
    void whole() {
        model.whole();
        former = Optional.empty();
        ask();
    }

    /** What is told of the figure as a whole. */
    void describe(String text) {
        described = text;
        tell();
    }

    private void tell() {
        setAccessibleText(reading.map(Reading::words).orElseGet(this::momentOrAll));
    }

    private String momentOrAll() {
        boolean apart = model.play().count() > 1 && model.play().moment().get() > 0;
        return apart ? moment(model) + ". " + described : described;
    }

    /** What a drawing shows at its moment, in words. */
    static String moment(PlateModel model) {
        if (model.drawn() != null && model.drawn().exhibit() instanceof Drawing drawing) {
            int at = model.play().moment().get();
            String time = FigureText.time(drawing, at);
            String label = drawing.moments().isEmpty() ? "" : drawing.moments().get(at).label();
            return time.isEmpty() || label.isEmpty() ? time + label : time + ": " + label;
        }
        return "";
    }

    @Override
    Optional<Sitting> sitting() {
        if (model.drawn() == null) {
            return Optional.empty();
        }
        int moment = model.play().moment().get();
        return Optional.of(new Sitting(model.seen(), model.earlier(), moment, former));
    }

    @Override
    void came(Painted is) {
        former = is.plot();
        if (walking) {
            read(plot().flatMap(plot -> model.walk(plot, 0)));
        } else if (pointed != null) {
            point(pointed);
        } else if (is.exhibit() instanceof Drawing) {
            tell();
        }
    }

    private Optional<Figure> figure() {
        return painted()
                .map(Painted::exhibit)
                .filter(Figure.class::isInstance)
                .map(Figure.class::cast);
    }

    private Spot spot(MouseEvent event) {
        return new Spot(event.getX() - snappedLeftInset(), event.getY() - snappedTopInset());
    }

    private void point(Spot spot) {
        pointed = spot;
        walking = false;
        read(figure().flatMap(figure -> plot().flatMap(plot -> Reading.near(figure, plot, spot))));
    }

    private void read(Optional<Reading> is) {
        reading = is;
        if (is.isPresent() && plot().isPresent()) {
            cross.show(is.get(), plot().get());
        } else {
            cross.hide();
        }
        tell();
    }

    private void walk(Optional<Reading> is) {
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
        event.consume(); // or a pane that scrolls would take the focus
        requestFocus();
        Spot at = spot(event);
        boolean inside = plot().filter(plot -> plot.area().holds(at.x(), at.y())).isPresent();
        begun = inside && event.getButton() == MouseButton.PRIMARY && model.canZoom() ? at : null;
    }

    private void drag(MouseEvent event) {
        if (begun != null && plot().isPresent()) {
            cross.hide();
            cross.showPart(begun, held(spot(event), plot().get().area()));
        }
    }

    private static Spot held(Spot spot, Plot.Area area) {
        return new Spot(
                Math.max(area.left(), Math.min(area.right(), spot.x())),
                Math.max(area.top(), Math.min(area.bottom(), spot.y())));
    }

    private void release(MouseEvent event) {
        cross.hidePart();
        if (begun != null && plot().isPresent()) {
            Plot plot = plot().get();
            model.zoom(plot, begun, held(spot(event), plot.area()));
            ask();
        }
        begun = null;
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
        Plot plot = plot().get();
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

    /** Escape lets go of what is read, and is left to others. */
    private boolean leave(KeyCode code) {
        if (code == KeyCode.ESCAPE) {
            letGo();
        }
        return false;
    }

    private void nearer(Plot plot, boolean nearer) {
        model.zoom(plot, reading, nearer);
        ask();
    }
}
