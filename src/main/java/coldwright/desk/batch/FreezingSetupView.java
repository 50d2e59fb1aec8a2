package coldwright.desk.batch;

import coldwright.batch.FreezingSetup;
import coldwright.batch.RecipeLine;
import coldwright.batch.SetupField;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.science.crystal.Method;
import coldwright.words.Words;

import javafx.scene.Node;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.BiConsumer;

/** How the batch is frozen and stored: method, bath, freezer, overrun, days. */
final class FreezingSetupView extends VBox {
    private final BiConsumer<String, FreezingSetup> changed;
    private final Map<Method, RadioButton> methods = new EnumMap<>(Method.class);
    private final Map<SetupField, TextField> fields = new EnumMap<>(SetupField.class);
    private final Map<SetupField, HBox> rows = new EnumMap<>(SetupField.class);
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
                        named("batch.bath.ice", SetupField.ICE),
                        named("batch.bath.salt", SetupField.SALT));
        fields.get(SetupField.ICE).setPromptText(Messages.of("batch.bath.usual"));
        fields.get(SetupField.SALT).setPromptText(Messages.of("batch.bath.usual"));
        fields.get(SetupField.SERVING).setPromptText(Messages.of("batch.bath.usual"));
        getChildren()
                .addAll(
                        InputFields.heading("batch.means"),
                        choices,
                        bath,
                        InputFields.choices(
                                named("batch.freezer", SetupField.FREEZER),
                                named("batch.air", SetupField.AIR),
                                named("batch.serving-at", SetupField.SERVING)),
                        InputFields.heading("batch.store"),
                        InputFields.choices(
                                named("batch.store.days", SetupField.DAYS),
                                named("batch.store.swing", SetupField.SWING)),
                        InputFields.choices(
                                named("batch.store.warm", SetupField.WARM),
                                named("batch.store.warm-for", SetupField.WARM_FOR)));
    }

    private static String unit(SetupField field) {
        String unit = Words.units().unit(field.measure());
        return switch (unit) {
            case "K" -> "°C";
            case "days" -> Messages.of("batch.store.d");
            default -> unit;
        };
    }

    private Node named(String key, SetupField field) {
        HBox named = InputFields.named(key, fields.get(field), unit(field));
        rows.put(field, named);
        return named;
    }

    private TextField live(SetupField field) {
        return InputFields.live(
                text -> describe(field.name(), freezingSetup.with(field, withUnit(field, text))));
    }

    /** A bare number is in the unit that the page shows. */
    private static String withUnit(SetupField field, String text) {
        String unit = Words.units().unit(field.measure());
        boolean bare = text.strip().matches("[+−-]?[0-9.,]+");
        return bare && !unit.equals(field.measure()) ? text + " " + unit : text;
    }

    /** A field's text in the unit that the page shows, as typed if it was typed in that unit. */
    private static String shown(SetupField field, FreezingSetup setup) {
        String text = setup.text(field);
        String unit = Words.units().unit(field.measure());
        if (unit.equals(field.measure())) {
            return text;
        }
        return text.endsWith(" " + unit)
                ? text.substring(0, text.length() - unit.length() - 1)
                : setup.value(field)
                        .map(one -> Words.units().value(one, field.measure()))
                        .map(one -> Words.written(Words.shown(), RecipeLine.number(one)))
                        .orElse(text);
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
        fields.forEach((field, shown) -> InputFields.put(shown, shown(field, is)));
        rows.forEach((field, row) -> InputFields.unit(row, unit(field)));
        showing = false;
        TextControls.show(bath, is.inBath());
    }
}
