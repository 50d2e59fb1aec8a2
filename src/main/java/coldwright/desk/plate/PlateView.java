package coldwright.desk.plate;

import coldwright.desk.model.Drawn;
import coldwright.desk.model.Pins;
import coldwright.desk.model.PlateModel;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;
import coldwright.figure.Drawing;
import coldwright.figure.Exhibit;
import coldwright.figure.FigureText;

import javafx.animation.PauseTransition;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/**
 * A figure as a plate: the painting, the time of a drawing, words to press, sources, and what is
 * folded away. Showing another figure of the same kind changes the painting alone.
 */
public final class PlateView extends VBox {
    /** A figure that has not changed for so long is put into words. */
    private static final Duration REST = Duration.millis(300);

    private final PlateRoom room;
    private final PlateModel model = new PlateModel();
    private final Face face;
    private final PlayBar play = new PlayBar(model);
    private final PlateWords words;
    private final Leaf leaf;
    private final Label sources = Words.label("", "plate-source");
    private final PauseTransition rest = new PauseTransition(REST);
    private final Button earlier;
    private final Button whole;
    private Optional<LargePlate> large = Optional.empty();

    private PlateView(PlateRoom room, boolean filling) {
        this.room = room;
        face = new Face(model, room, filling);
        words = new PlateWords(room);
        leaf = new Leaf(model, room);
        getStyleClass().add("plate");
        if (filling) {
            VBox.setVgrow(face, Priority.ALWAYS);
            getStyleClass().add("filling");
        }
        earlier = words.add("plate.earlier.off", this::turnEarlier);
        whole = words.add("plate.whole", face::whole);
        words.want(whole, false);
        Words.show(play, false);
        Words.show(sources, false);
        getChildren().addAll(face, play, sources, words, leaf);
        model.zoomed().addListener((value, was, is) -> showWhole(is));
        rest.setOnFinished(event -> describe());
    }

    /**
     * A plate among others, whose figures can be pinned.
     *
     * @param room what plates share
     * @param pins where its figure is kept to compare with
     * @param place which list it is pinned from
     */
    static PlateView on(PlateRoom room, Pins pins, Object place) {
        PlateView view = new PlateView(room, false);
        view.words.add("plate.pin", () -> pins.pin(view.model.drawn(), place));
        view.addDeeds();
        view.words.add("plate.large", view::enlarge);
        return view;
    }

    /** A plate that was pinned. */
    static PlateView pinned(PlateRoom room, Runnable unpin) {
        PlateView view = new PlateView(room, false);
        view.words.add("plate.unpin", unpin);
        view.addDeeds();
        return view;
    }

    /** A plate that takes all the room there is. */
    static PlateView filling(PlateRoom room) {
        PlateView view = new PlateView(room, true);
        view.addDeeds();
        return view;
    }

    private void addDeeds() {
        Printing printing = new Printing(model, room, leaf::say);
        words.add("plate.copy", printing::copy);
        words.add("plate.save", () -> printing.save(getScene().getWindow()));
        words.add("plate.table", leaf::turnTable);
        words.add("plate.described", leaf::turnWords);
    }

    /**
     * Shows a figure or drawing; one that is shown already is left as it is.
     *
     * @param is what to show
     */
    public void show(Drawn is) {
        Drawn was = model.drawn();
        if (is.equals(was)) {
            return;
        }
        boolean otherAxes = model.show(is);
        if (was == null || was.exhibit().getClass() != is.exhibit().getClass()) {
            face.describe(is.exhibit().title());
        }
        boolean timed = is.exhibit() instanceof Drawing drawing && drawing.moments().size() > 1;
        if (timed != play.isManaged()) {
            Words.show(play, timed);
        }
        if (timed) {
            play.take();
        }
        words.want(earlier, is.earlier().isPresent());
        showSources(is.exhibit());
        face.changed(otherAxes);
        leaf.changed();
        large.ifPresent(one -> one.show(is));
        rest.playFromStart();
    }

    private void showSources(Exhibit exhibit) {
        String text = String.join("; ", exhibit.sources());
        if (!text.equals(sources.getText())) {
            sources.setText(text);
            Words.show(sources, !text.isEmpty());
        }
    }

    private void showWhole(boolean zoomed) {
        if (!zoomed && whole.isFocused()) {
            face.requestFocus();
        }
        words.want(whole, zoomed);
    }

    private void turnEarlier() {
        boolean shown = !model.earlierShown().get();
        model.earlierShown().set(shown);
        earlier.setText(Say.of(shown ? "plate.earlier.off" : "plate.earlier.on"));
    }

    /** Puts the figure into words on the pen's thread. */
    private void describe() {
        Drawn drawn = model.drawn();
        CompletableFuture.supplyAsync(() -> FigureText.describe(drawn.shown()), room.pens().work())
                .thenAcceptAsync(
                        text -> {
                            if (drawn.equals(model.drawn())) {
                                face.describe(text);
                                leaf.described(text);
                            }
                        },
                        room.pens().window());
    }

    private void enlarge() {
        LargePlate plate = new LargePlate(room);
        large = Optional.of(plate);
        plate.show(model.drawn());
        plate.at(model.play().moment().get());
        plate.open(
                face,
                () -> {
                    large = Optional.empty();
                    model.play().goTo(plate.moment());
                });
    }

    PlateModel model() {
        return model;
    }

    Face face() {
        return face;
    }
}
