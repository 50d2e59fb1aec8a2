package coldwright.desk.batch;

import coldwright.batch.RecipeFile.Method;
import coldwright.desk.batch.model.FreezingSetup;
import coldwright.desk.batch.model.StorageSetup;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;

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
final class FreezingSetupView extends VBox {
    private final BiConsumer<String, FreezingSetup> changed;
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
    private FreezingSetup freezingSetup = FreezingSetup.USUAL;
    private boolean showing;

    /**
     * Shows choices.
     *
     * @param changed takes the place that was changed and the means from now on
     */
    FreezingSetupView(BiConsumer<String, FreezingSetup> changed) {
        this.changed = changed;
        getStyleClass().add("brew-means");
        FlowPane choices = new FlowPane();
        choices.getStyleClass().add("brew-choices");
        ToggleGroup group = new ToggleGroup();
        for (Method method : Method.values()) {
            RadioButton choice =
                    new RadioButton(
                            Messages.of("batch.method." + method.name().toLowerCase(Locale.ROOT)));
            choice.setToggleGroup(group);
            choice.setOnAction(event -> describe("", means().by(method)));
            methods.put(method, choice);
            choices.getChildren().add(choice);
        }
        bath =
                flow(
                        InputFields.named("batch.bath.ice", ice, "g"),
                        InputFields.named("batch.bath.salt", salt, "g"));
        ice.setPromptText(Messages.of("batch.bath.usual"));
        salt.setPromptText(Messages.of("batch.bath.usual"));
        getChildren()
                .addAll(
                        InputFields.heading("batch.means"),
                        choices,
                        bath,
                        flow(
                                InputFields.named("batch.freezer", freezer, "°C"),
                                InputFields.named("batch.air", air, "%")),
                        InputFields.heading("batch.store"),
                        flow(
                                InputFields.named(
                                        "batch.store.days", days, Messages.of("batch.store.d")),
                                InputFields.named("batch.store.swing", swing, "°C")),
                        flow(
                                InputFields.named("batch.store.warm", warm, "°C"),
                                InputFields.named("batch.store.warm-for", warmFor, "h")));
    }

    private TextField stored(String place, BiFunction<StorageSetup, String, StorageSetup> now) {
        return live(place, is -> means().kept(now.apply(means().store(), is)));
    }

    private static FlowPane flow(Node... nodes) {
        FlowPane flow = new FlowPane(nodes);
        flow.getStyleClass().add("brew-choices");
        return flow;
    }

    private FreezingSetup means() {
        return freezingSetup;
    }

    private TextField live(String place, Function<String, FreezingSetup> now) {
        return InputFields.live(text -> describe(place, now.apply(text)));
    }

    private void describe(String place, FreezingSetup now) {
        if (!showing) {
            changed.accept(place, now);
        }
    }

    /** Shows means as they stand now. */
    void show(FreezingSetup is) {
        freezingSetup = is;
        showing = true;
        methods.get(is.method()).setSelected(true);
        InputFields.put(ice, is.iceG());
        InputFields.put(salt, is.saltG());
        InputFields.put(freezer, is.freezerC());
        InputFields.put(air, is.airPercent());
        InputFields.put(days, is.store().days());
        InputFields.put(swing, is.store().swingC());
        InputFields.put(warm, is.store().warmC());
        InputFields.put(warmFor, is.store().warmHours());
        showing = false;
        TextControls.show(bath, is.inBath());
    }
}
