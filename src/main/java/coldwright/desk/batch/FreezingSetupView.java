package coldwright.desk.batch;

import coldwright.batch.FreezingSetup;
import coldwright.batch.SetupField;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.science.crystal.Method;

import javafx.scene.Node;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.BiConsumer;

/** How the batch is frozen and stored: method, bath, freezer, overrun, days. */
final class FreezingSetupView extends VBox {
    private final BiConsumer<String, FreezingSetup> changed;
    private final Map<Method, RadioButton> methods = new EnumMap<>(Method.class);
    private final Map<SetupField, TextField> fields = new EnumMap<>(SetupField.class);
    private final FlowPane bath;
    private FreezingSetup freezingSetup = FreezingSetup.USUAL;
    private boolean showing;

    /**
     * Shows choices.
     *
     * @param changed receives the changed field and the new setup
     */
    FreezingSetupView(BiConsumer<String, FreezingSetup> changed) {
        this.changed = changed;
        getStyleClass().add("brew-means");
        FlowPane choices = InputFields.choices();
        ToggleGroup group = new ToggleGroup();
        for (SetupField field : SetupField.values()) {
            fields.put(field, live(field));
        }
        for (Method method : Method.values()) {
            RadioButton choice =
                    new RadioButton(Messages.of("batch.method." + FreezingSetup.word(method)));
            choice.setToggleGroup(group);
            choice.setOnAction(event -> describe("", freezingSetup.by(method)));
            methods.put(method, choice);
            choices.getChildren().add(choice);
        }
        bath =
                InputFields.choices(
                        named("batch.bath.ice", SetupField.ICE, "g"),
                        named("batch.bath.salt", SetupField.SALT, "g"));
        fields.get(SetupField.ICE).setPromptText(Messages.of("batch.bath.usual"));
        fields.get(SetupField.SALT).setPromptText(Messages.of("batch.bath.usual"));
        fields.get(SetupField.SERVING).setPromptText(Messages.of("batch.bath.usual"));
        getChildren()
                .addAll(
                        InputFields.heading("batch.means"),
                        choices,
                        bath,
                        InputFields.choices(
                                named("batch.freezer", SetupField.FREEZER, "°C"),
                                named("batch.air", SetupField.AIR, "%"),
                                named("batch.serving-at", SetupField.SERVING, "°C")),
                        InputFields.heading("batch.store"),
                        InputFields.choices(
                                named(
                                        "batch.store.days",
                                        SetupField.DAYS,
                                        Messages.of("batch.store.d")),
                                named("batch.store.swing", SetupField.SWING, "°C")),
                        InputFields.choices(
                                named("batch.store.warm", SetupField.WARM, "°C"),
                                named("batch.store.warm-for", SetupField.WARM_FOR, "h")));
    }

    private Node named(String key, SetupField field, String unit) {
        return InputFields.named(key, fields.get(field), unit);
    }

    private TextField live(SetupField field) {
        return InputFields.live(text -> describe(field.name(), freezingSetup.with(field, text)));
    }

    private void describe(String place, FreezingSetup now) {
        if (!showing) {
            changed.accept(place, now);
        }
    }

    /** Shows a setup. */
    void show(FreezingSetup is) {
        freezingSetup = is;
        showing = true;
        methods.get(is.method()).setSelected(true);
        fields.forEach((field, shown) -> InputFields.put(shown, is.text(field)));
        showing = false;
        TextControls.show(bath, is.inBath());
    }
}
