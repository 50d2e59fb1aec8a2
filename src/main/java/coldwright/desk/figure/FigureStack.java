package coldwright.desk.figure;

import coldwright.desk.figure.model.PinnedFigures;
import coldwright.desk.figure.model.ShownFigure;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;

import javafx.beans.InvalidationListener;
import javafx.beans.Observable;
import javafx.beans.WeakInvalidationListener;
import javafx.beans.value.ObservableValue;
import javafx.collections.ObservableList;
import javafx.scene.layout.VBox;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Figures in a column, pinned ones below; drawn only while visible. */
public final class FigureStack extends VBox {
    private final FigureSettings figureSettings;
    private final PinnedFigures pinnedFigures;
    private final ObservableValue<Boolean> wanted;
    private final boolean allPins;
    private final VBox now = TextControls.styled(new VBox(), "figures-now");
    private final VBox kept = TextControls.styled(new VBox(), "figures-pinned");
    private final Map<PinnedFigures.PinnedFigure, VBox> keptViews = new HashMap<>();
    private final InvalidationListener refreshing = value -> refresh();

    /** Weak, because what it follows lives longer than this view. */
    private final InvalidationListener listener = new WeakInvalidationListener(refreshing);

    private ObservableList<ShownFigure> drawn;

    /** Makes a stack, visible while {@code wanted}; the figures pinned here are at its bottom. */
    public FigureStack(
            ObservableList<ShownFigure> drawn,
            FigureSettings figureSettings,
            PinnedFigures pinnedFigures,
            ObservableValue<Boolean> wanted) {
        this(drawn, figureSettings, pinnedFigures, wanted, false);
    }

    FigureStack(
            ObservableList<ShownFigure> drawn,
            FigureSettings figureSettings,
            PinnedFigures pinnedFigures,
            ObservableValue<Boolean> wanted,
            boolean allPins) {
        this.figureSettings = figureSettings;
        this.pinnedFigures = pinnedFigures;
        this.wanted = wanted;
        this.allPins = allPins;
        getStyleClass().add("figure-stack");
        getChildren().addAll(now, kept);
        for (Observable one : List.of(wanted, figureSettings.units(), pinnedFigures.all())) {
            one.addListener(listener);
        }
        show(drawn);
    }

    public void show(ObservableList<ShownFigure> is) {
        if (drawn != null) {
            drawn.removeListener(listener);
        }
        drawn = is;
        drawn.addListener(listener);
        List<Integer> moments =
                IntStream.range(0, drawn.size())
                        .mapToObj(index -> pinnedFigures.moment(drawn, index))
                        .toList();
        refresh();
        for (int i = 0; i < now.getChildren().size(); i++) {
            ((FigureView) now.getChildren().get(i)).model().play().goTo(moments.get(i));
        }
    }

    private FigureView viewOf(int index) {
        FigureView view =
                FigureView.on(figureSettings, pinnedFigures, allPins ? pinnedFigures : drawn);
        view.model()
                .play()
                .moment()
                .subscribe((was, is) -> pinnedFigures.setMoment(drawn, index, is.intValue()));
        return view;
    }

    private void refresh() {
        boolean some = wanted.getValue();
        int count = some ? drawn.size() : 0;
        while (now.getChildren().size() > count) {
            now.getChildren().remove(now.getChildren().size() - 1);
        }
        int before = now.getChildren().size();
        while (now.getChildren().size() < count) {
            now.getChildren().add(viewOf(now.getChildren().size()));
        }
        for (int i = 0; i < count; i++) {
            FigureView view = (FigureView) now.getChildren().get(i);
            view.show(drawn.get(i).in(figureSettings.units().get()));
            if (i >= before) {
                view.model().play().goTo(pinnedFigures.moment(drawn, i));
            }
        }
        refreshKept(some ? mine() : List.of());
        boolean shown = count + kept.getChildren().size() > 0;
        if (shown != isManaged()) {
            TextControls.show(this, shown);
        }
    }

    private List<PinnedFigures.PinnedFigure> mine() {
        return pinnedFigures.all().stream()
                .filter(pinnedFigure -> allPins || pinnedFigure.place() == drawn)
                .toList();
    }

    private void refreshKept(List<PinnedFigures.PinnedFigure> all) {
        keptViews.keySet().retainAll(all);
        List<VBox> views =
                all.stream()
                        .map(
                                pinnedFigure ->
                                        keptViews.computeIfAbsent(pinnedFigure, this::keptView))
                        .toList();
        if (!kept.getChildren().equals(views)) {
            kept.getChildren().setAll(views);
        }
    }

    private VBox keptView(PinnedFigures.PinnedFigure pinnedFigure) {
        FigureView plate =
                FigureView.pinned(figureSettings, () -> pinnedFigures.unpin(pinnedFigure));
        plate.show(pinnedFigure.drawn());
        String caption = Messages.of("figure.pinned", pinnedFigure.drawn().exhibit().title());
        VBox view =
                TextControls.styled(
                        new VBox(TextControls.label(caption, "pinned-caption"), plate), "pinned");
        return view;
    }
}
