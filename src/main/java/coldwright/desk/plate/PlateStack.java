package coldwright.desk.plate;

import coldwright.desk.model.Drawn;
import coldwright.desk.model.Pins;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;

import javafx.beans.value.ObservableValue;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.layout.VBox;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Figures one under the other, pinned ones below; drawn only where they are to be seen. */
public final class PlateStack extends VBox {
    private final PlateRoom room;
    private final Pins pins;
    private final ObservableValue<Boolean> wanted;
    private final boolean allPins;
    private final VBox now = new VBox();
    private final VBox kept = new VBox();
    private final Map<Pins.Pin, VBox> keptViews = new HashMap<>();
    private final ListChangeListener<Drawn> listener = change -> refresh();
    private ObservableList<Drawn> drawn;

    /**
     * Makes a stack.
     *
     * @param drawn the figures
     * @param room what plates share
     * @param pins the figures that the learner keeps; those pinned here stand below
     * @param wanted whether it is to be seen
     */
    public PlateStack(
            ObservableList<Drawn> drawn,
            PlateRoom room,
            Pins pins,
            ObservableValue<Boolean> wanted) {
        this(drawn, room, pins, wanted, false);
    }

    PlateStack(
            ObservableList<Drawn> drawn,
            PlateRoom room,
            Pins pins,
            ObservableValue<Boolean> wanted,
            boolean allPins) {
        this.room = room;
        this.pins = pins;
        this.wanted = wanted;
        this.allPins = allPins;
        getStyleClass().add("plates");
        now.getStyleClass().add("plates-now");
        kept.getStyleClass().add("plates-kept");
        getChildren().addAll(now, kept);
        wanted.addListener((value, was, is) -> refresh());
        room.units().addListener((value, was, is) -> refresh());
        pins.all().addListener((ListChangeListener<Pins.Pin>) change -> refresh());
        show(drawn);
    }

    /**
     * Shows other figures.
     *
     * @param is the figures
     */
    public void show(ObservableList<Drawn> is) {
        if (drawn != null) {
            drawn.removeListener(listener);
        }
        drawn = is;
        drawn.addListener(listener);
        refresh();
    }

    private void refresh() {
        boolean some = wanted.getValue();
        int count = some ? drawn.size() : 0;
        while (now.getChildren().size() > count) {
            now.getChildren().remove(now.getChildren().size() - 1);
        }
        while (now.getChildren().size() < count) {
            now.getChildren().add(PlateView.on(room, pins, allPins ? pins : drawn));
        }
        for (int i = 0; i < count; i++) {
            ((PlateView) now.getChildren().get(i)).show(drawn.get(i).in(room.units().get()));
        }
        refreshKept(some ? mine() : List.of());
        boolean shown = count + kept.getChildren().size() > 0;
        if (shown != isManaged()) {
            Words.show(this, shown);
        }
    }

    private List<Pins.Pin> mine() {
        return pins.all().stream().filter(pin -> allPins || pin.place() == drawn).toList();
    }

    private void refreshKept(List<Pins.Pin> all) {
        keptViews.keySet().retainAll(all);
        List<VBox> views =
                all.stream().map(pin -> keptViews.computeIfAbsent(pin, this::keptView)).toList();
        if (!kept.getChildren().equals(views)) {
            kept.getChildren().setAll(views);
        }
    }

    private VBox keptView(Pins.Pin pin) {
        PlateView plate = PlateView.pinned(room, () -> pins.unpin(pin));
        plate.show(pin.drawn());
        String caption = Say.of("plate.pinned", pin.drawn().exhibit().title());
        VBox view = new VBox(Words.label(caption, "pinned-caption"), plate);
        view.getStyleClass().add("pinned");
        return view;
    }
}
