package coldwright.desk.figure;

import coldwright.desk.figure.model.FigureModel;
import coldwright.desk.figure.model.PinnedFigures;
import coldwright.desk.figure.model.ShownFigure;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.figure.Drawing;
import coldwright.figure.Exhibit;
import coldwright.figure.FigureDescription;

import javafx.animation.PauseTransition;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/**
 * A figure with its playback bar, buttons, sources and folded details. Showing another figure of
 * the same kind changes only the image.
 */
public final class FigureView extends VBox {
    /** A figure unchanged for this long is described in words. */
    private static final Duration REST = Duration.millis(300);

    private final FigureSettings room;
    private final FigureModel model = new FigureModel();
    private final FigureCanvas figureCanvas;
    private final PlaybackBar play = new PlaybackBar(model);
    private final FigureActions words;
    private final FigureDetails details;
    private final FilmForm film;
    private Button filming;
    private final Label sources = TextControls.label("", "figure-source");
    private final PauseTransition rest = new PauseTransition(REST);
    private final Button earlier;
    private final Button whole;
    private Optional<EnlargedFigure> large = Optional.empty();

    private FigureView(FigureSettings room, boolean filling) {
        this.room = room;
        figureCanvas = new FigureCanvas(model, room, filling);
        words = new FigureActions(room);
        details = new FigureDetails(model, room);
        film = new FilmForm(model, room);
        getStyleClass().add("figure");
        if (filling) {
            VBox.setVgrow(figureCanvas, Priority.ALWAYS);
            getStyleClass().add("filling");
        }
        earlier = words.add("figure.earlier.hide", this::turnEarlier);
        whole = words.add("figure.reset-zoom", figureCanvas::whole);
        words.want(whole, false);
        TextControls.show(play, false);
        TextControls.show(sources, false);
        getChildren().addAll(figureCanvas, play, sources, words, film, details);
        model.zoomed().addListener((value, was, is) -> showWhole(is));
        rest.setOnFinished(event -> describe());
    }

    /** A figure among others that can be pinned, from the list {@code place}. */
    static FigureView on(FigureSettings room, PinnedFigures pinnedFigures, Object place) {
        FigureView view = new FigureView(room, false);
        view.words.add("figure.pin", () -> pinnedFigures.pin(view.model.drawn(), place));
        view.addActions();
        view.words.add("figure.enlarge", view::enlarge);
        return view;
    }

    /** A pinned figure. */
    static FigureView pinned(FigureSettings room, Runnable unpin) {
        FigureView view = new FigureView(room, false);
        view.words.add("figure.unpin", unpin);
        view.addActions();
        return view;
    }

    /** A figure that fills the available area. */
    static FigureView filling(FigureSettings room) {
        FigureView view = new FigureView(room, true);
        view.addActions();
        return view;
    }

    private void addActions() {
        FigureExport figureExport = new FigureExport(model, room, details::say);
        words.add("figure.copy", figureExport::copy);
        words.add("figure.save", () -> figureExport.save(getScene().getWindow()));
        filming = words.add("figure.film", film::turn);
        words.want(filming, false);
        words.add("figure.table", details::turnTable);
        words.add("figure.description", details::turnWords);
    }

    /** Shows a figure or drawing, if it isn't shown already. */
    public void show(ShownFigure is) {
        ShownFigure was = model.drawn();
        if (is.equals(was)) {
            return;
        }
        boolean otherAxes = model.show(is);
        if (was == null || was.exhibit().getClass() != is.exhibit().getClass()) {
            figureCanvas.describe(is.exhibit().title());
        }
        boolean timed = is.exhibit() instanceof Drawing drawing && drawing.moments().size() > 1;
        if (timed != play.isManaged()) {
            TextControls.show(play, timed);
            words.want(filming, timed);
        }
        if (timed) {
            play.take();
        }
        words.want(earlier, is.earlier().isPresent());
        showSources(is.exhibit());
        figureCanvas.changed(otherAxes);
        details.changed();
        large.ifPresent(one -> one.show(is));
        rest.playFromStart();
    }

    private void showSources(Exhibit exhibit) {
        String text = String.join("; ", exhibit.sources());
        if (!text.equals(sources.getText())) {
            sources.setText(text);
            TextControls.show(sources, !text.isEmpty());
        }
    }

    private void showWhole(boolean zoomed) {
        if (!zoomed && whole.isFocused()) {
            figureCanvas.requestFocus();
        }
        words.want(whole, zoomed);
    }

    private void turnEarlier() {
        boolean shown = !model.earlierShown().get();
        model.earlierShown().set(shown);
        earlier.setText(Messages.of(shown ? "figure.earlier.hide" : "figure.earlier.show"));
    }

    /** Describes the figure in words, on the drawing thread. */
    private void describe() {
        ShownFigure shownFigure = model.drawn();
        CompletableFuture.supplyAsync(
                        () -> FigureDescription.describe(shownFigure.shown()),
                        room.renderContext().work())
                .thenAcceptAsync(
                        text -> {
                            if (shownFigure.equals(model.drawn())) {
                                figureCanvas.describe(text);
                                details.described(text);
                            }
                        },
                        room.renderContext().window());
    }

    private void enlarge() {
        EnlargedFigure plate = new EnlargedFigure(room);
        large = Optional.of(plate);
        plate.open(
                model.drawn(),
                model.play().moment().get(),
                figureCanvas,
                moment -> {
                    large = Optional.empty();
                    model.play().goTo(moment);
                });
    }

    FigureModel model() {
        return model;
    }

    FigureCanvas face() {
        return figureCanvas;
    }
}
