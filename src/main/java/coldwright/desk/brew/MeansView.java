package coldwright.desk.brew;

import coldwright.batch.BatchFile.Method;
import coldwright.desk.brew.model.Means;
import coldwright.desk.brew.model.Store;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;

import javafx.scene.Node;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.function.Function;

/** What the batch is frozen with and how it is kept: method, bath, freezer, air, days. */
final class MeansView extends VBox {
    private final BiConsumer<String, Means> changed;
    private final Map<Method, RadioButton> methods = new EnumMap<>(Method.class);
    private final TextField ice = live("ice", is -> means().bath(is, means().saltG()));
    private final TextField salt = live("salt", is -> means().bath(means().iceG(), is));
    private final TextField freezer = live("freezer", is -> means().freezer(is));
    private final TextField air = live("air", is -> means().air(is));
    private final TextField days = stored("days", (store, is) -> store.forDays(is));
    private final TextField swing = stored("swing", (store, is) -> store.swinging(is));
    private final TextField warm = stored("warm", (store, is) -> store.warmedTo(is));
    private final TextField warmFor = stored("warm-for", (store, is) -> store.warmedFor(is));
    private final FlowPane bath;
    private Means means = Means.USUAL;
    private boolean showing;

    /**
     * Shows choices.
     *
     * @param changed takes the place that was changed and the means from now on
     */
    MeansView(BiConsumer<String, Means> changed) {
        this.changed = changed;
        getStyleClass().add("brew-means");
        FlowPane choices = new FlowPane();
        choices.getStyleClass().add("brew-choices");
        ToggleGroup group = new ToggleGroup();
        for (Method method : Method.values()) {
            RadioButton choice =
                    new RadioButton(
                            Say.of("batch.method." + method.name().toLowerCase(Locale.ROOT)));
            choice.setToggleGroup(group);
            choice.setOnAction(event -> tell("", means().by(method)));
            methods.put(method, choice);
            choices.getChildren().add(choice);
        }
        bath =
                flow(
                        Fields.named("batch.bath.ice", ice, "g"),
                        Fields.named("batch.bath.salt", salt, "g"));
        ice.setPromptText(Say.of("batch.bath.usual"));
        salt.setPromptText(Say.of("batch.bath.usual"));
        getChildren()
                .addAll(
                        Fields.heading("batch.means"),
                        choices,
                        bath,
                        flow(
                                Fields.named("batch.freezer", freezer, "°C"),
                                Fields.named("batch.air", air, "%")),
                        Fields.heading("batch.store"),
                        flow(
                                Fields.named("batch.store.days", days, Say.of("batch.store.d")),
                                Fields.named("batch.store.swing", swing, "°C")),
                        flow(
                                Fields.named("batch.store.warm", warm, "°C"),
                                Fields.named("batch.store.warm-for", warmFor, "h")));
    }

    private TextField stored(String place, BiFunction<Store, String, Store> now) {
        return live(place, is -> means().kept(now.apply(means().store(), is)));
    }

    private static FlowPane flow(Node... nodes) {
        FlowPane flow = new FlowPane(nodes);
        flow.getStyleClass().add("brew-choices");
        return flow;
    }

    private Means means() {
        return means;
    }

    private TextField live(String place, Function<String, Means> now) {
        return Fields.live(text -> tell(place, now.apply(text)));
    }

    private void tell(String place, Means now) {
        if (!showing) {
            changed.accept(place, now);
        }
    }

    /** Shows means as they stand now. */
    void show(Means is) {
        means = is;
        showing = true;
        methods.get(is.method()).setSelected(true);
        Fields.put(ice, is.iceG());
        Fields.put(salt, is.saltG());
        Fields.put(freezer, is.freezerC());
        Fields.put(air, is.airPercent());
        Fields.put(days, is.store().days());
        Fields.put(swing, is.store().swingC());
        Fields.put(warm, is.store().warmC());
        Fields.put(warmFor, is.store().warmHours());
        showing = false;
        Words.show(bath, is.inBath());
    }
}
