package coldwright.desk.page;

import coldwright.desk.model.Drawn;

import javafx.beans.value.ObservableValue;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.layout.VBox;

/** Figures one under the other; drawn only where they are to be seen. */
final class PlateStack extends VBox {
    private final PageState state;
    private final ObservableValue<Boolean> wanted;
    private ObservableList<Drawn> drawn;
    private final ListChangeListener<Drawn> listener = change -> refresh();

    /**
     * Makes a stack.
     *
     * @param drawn the figures
     * @param state the page's
     * @param wanted whether it is to be seen
     */
    PlateStack(ObservableList<Drawn> drawn, PageState state, ObservableValue<Boolean> wanted) {
        this.state = state;
        this.wanted = wanted;
        getStyleClass().add("plates");
        wanted.addListener((value, was, is) -> refresh());
        state.emPx().addListener((value, was, is) -> setEm(is.doubleValue()));
        show(drawn);
    }

    /** Shows other figures. */
    void show(ObservableList<Drawn> is) {
        if (drawn != null) {
            drawn.removeListener(listener);
        }
        drawn = is;
        drawn.addListener(listener);
        refresh();
    }

    private void refresh() {
        boolean some = wanted.getValue() && !drawn.isEmpty();
        Words.show(this, some);
        int count = some ? drawn.size() : 0;
        while (getChildren().size() > count) {
            getChildren().remove(getChildren().size() - 1);
        }
        while (getChildren().size() < count) {
            PlateView plate = new PlateView(state.pens());
            plate.setEm(state.emPx().get());
            getChildren().add(plate);
        }
        for (int i = 0; i < count; i++) {
            ((PlateView) getChildren().get(i)).show(drawn.get(i));
        }
    }

    private void setEm(double px) {
        getChildren().forEach(plate -> ((PlateView) plate).setEm(px));
    }
}
