package coldwright.desk.brew;

import coldwright.desk.brew.model.Line;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;
import coldwright.science.mix.Ingredient;
import coldwright.text.Written;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

import java.util.Map;
import java.util.Optional;

/** A line of the recipe: how much, of what, and what is wrong with it. */
final class LineView extends VBox {
    private final Deeds deeds;
    private final int index;
    private final TextField amount = Fields.field("brew-amount");
    private final TextField name = Fields.field("brew-name");
    private final Label grams = new Label();
    private final Label fault = Words.label("", "brew-fault");
    private final Button away;
    private final Completion completion;
    private Line line = new Line("", "");
    private Map<String, Ingredient> own = Map.of();
    private boolean showing;

    /** What can be done with a line. */
    interface Deeds {
        /** It was typed into; the amount itself may scale all others. */
        void typed(int index, Line line, boolean inAmount);

        /** It shall go. */
        void away(int index);

        /** Its end was reached; the next line shall be typed. */
        void next(int index);
    }

    LineView(int index, Deeds deeds) {
        this.index = index;
        this.deeds = deeds;
        getStyleClass().add("brew-line");
        HBox.setHgrow(name, Priority.ALWAYS);
        grams.getStyleClass().add("brew-grams");
        grams.setMinWidth(USE_PREF_SIZE);
        away = Words.button("×", () -> deeds.away(index));
        away.getStyleClass().add("brew-away");
        HBox row = new HBox(amount, name, grams, away);
        row.setAlignment(Pos.BASELINE_LEFT);
        row.getStyleClass().add("brew-row");
        getChildren().addAll(row, fault);
        completion = new Completion(name, () -> own.keySet(), this::take);
        amount.textProperty().addListener(value -> typed(true));
        name.textProperty().addListener(value -> typed(false));
        amount.setOnAction(event -> name.requestFocus());
        name.setOnAction(event -> deeds.next(index));
        name.setOnKeyReleased(
                event -> {
                    if (event.getCode() == KeyCode.DOWN) {
                        completion.offer();
                    }
                });
    }

    private void take(String chosen) {
        name.setText(chosen);
        name.end();
    }

    private void typed(boolean inAmount) {
        if (!showing) {
            Line now = new Line(amount.getText(), name.getText(), line.leastG(), line.mostG());
            deeds.typed(index, now, inAmount);
            if (!inAmount) {
                completion.offer();
            }
        }
    }

    /** Shows a line as it stands now. */
    void show(Line is, Map<String, Ingredient> newOwn) {
        line = is;
        own = newOwn;
        showing = true;
        Fields.put(amount, is.amount());
        Fields.put(name, is.name());
        showing = false;
        String spooned = is.inGrams(newOwn);
        grams.setText(spooned.isEmpty() ? "" : "= " + spooned);
        Optional<String> wrong = is.fault(newOwn);
        fault.setText(wrong.map(Written::sentence).orElse(lacks(is)));
        Words.show(fault, !fault.getText().isEmpty());
        amount.setAccessibleText(Say.of("batch.amount.of", is.name()));
        name.setAccessibleText(
                wrong.map(words -> Say.of("batch.ingredient") + ". " + words)
                        .orElse(Say.of("batch.ingredient")));
        away.setAccessibleText(Say.of("batch.take-out", is.name()));
    }

    private static String lacks(Line line) {
        return line.amount().isBlank() && !line.name().isBlank() ? Say.of("batch.no-amount") : "";
    }

    void focusAmount() {
        amount.requestFocus();
    }
}
