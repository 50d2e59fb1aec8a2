package coldwright.desk.batch;

import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.recipe.LineReading;
import coldwright.science.mix.Ingredient;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

import java.util.List;
import java.util.function.Consumer;

/** Input fields with labels. */
final class InputFields {
    private InputFields() {}

    static TextField field(String look) {
        TextField field = new TextField();
        field.getStyleClass().addAll("number-field", look);
        return field;
    }

    /** Sets a field's text if it differs, so that the caret stays. */
    static void put(TextField field, String text) {
        if (!field.getText().equals(text)) {
            int caret = field.getCaretPosition();
            field.setText(text);
            field.positionCaret(Math.min(caret, text.length()));
        }
    }

    /** A field with its label before it and its unit after it. */
    static HBox named(String key, Control field, String unit) {
        Label name = new Label(Messages.of(key));
        name.setLabelFor(field);
        name.setMinWidth(HBox.USE_PREF_SIZE);
        Label after = new Label();
        after.setMinWidth(HBox.USE_PREF_SIZE);
        HBox row = new HBox(name, field, after);
        row.setAlignment(Pos.BASELINE_LEFT);
        row.getStyleClass().add("brew-named");
        unit(row, unit);
        return row;
    }

    /** Shows another unit after a named field. */
    static void unit(HBox named, String unit) {
        Label name = (Label) named.getChildren().get(0);
        ((Label) named.getChildren().get(2)).setText(unit);
        String all = unit.isEmpty() ? name.getText() : name.getText() + ", " + unit;
        named.getChildren().get(1).setAccessibleText(all);
    }

    /** A short field that reports its text at each key. */
    static TextField live(Consumer<String> to) {
        TextField field = field("brew-short");
        field.textProperty().addListener((value, was, is) -> to.accept(is));
        return field;
    }

    /** A section heading. */
    static Node heading(String key) {
        return TextControls.label(Messages.of(key), "brew-heading");
    }

    /** A button that shows and hides a part, which is hidden at first, and the part below it. */
    static VBox unfolding(String words, Node part, Runnable opened) {
        TextControls.show(part, false);
        Button button =
                TextControls.button(
                        words,
                        () -> {
                            TextControls.show(part, !part.isVisible());
                            if (part.isVisible()) {
                                opened.run();
                            }
                        });
        // long words, such as names by law, wrap instead of making the column wider
        button.setWrapText(true);
        button.setMinSize(0, Region.USE_PREF_SIZE);
        return new VBox(new HBox(button), part);
    }

    /** Nodes in a row that wraps. */
    static FlowPane choices(Node... nodes) {
        FlowPane choices = new FlowPane(nodes);
        choices.getStyleClass().add("brew-choices");
        return choices;
    }

    /** Buttons for the readings of an unclear line, and for names like an unknown one. */
    static FlowPane choices(
            List<LineReading.Choice> readings,
            Consumer<LineReading.Choice> choose,
            List<Ingredient> names,
            Consumer<Ingredient> take) {
        FlowPane choices = choices();
        for (LineReading.Choice one : readings) {
            choices.getChildren()
                    .add(TextControls.button(one.label().shown(), () -> choose.accept(one)));
        }
        for (Ingredient one : names) {
            choices.getChildren()
                    .add(TextControls.button(one.phrase().shown(), () -> take.accept(one)));
        }
        return choices;
    }

    /** Adds a sentence to a part. */
    static void say(Pane part, String sentence, String look) {
        part.getChildren().add(TextControls.label(sentence, look));
    }
}
