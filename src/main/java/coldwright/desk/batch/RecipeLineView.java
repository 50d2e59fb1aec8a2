package coldwright.desk.batch;

import coldwright.batch.Dextrose;
import coldwright.batch.RecipeLine;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.recipe.IngredientLine;
import coldwright.recipe.LineReading;
import coldwright.science.mix.Ingredient;
import coldwright.text.DisplayText;
import coldwright.words.Phrase;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A line of the recipe: amount, ingredient, and its error. */
final class RecipeLineView extends VBox {
    private final LineActions actions;
    private final int index;
    private final TextField amount = InputFields.field("brew-amount");
    private final TextField name = InputFields.field("brew-name");
    private final Label grams = new Label();
    private final Label fault = TextControls.label("", "brew-fault");
    private final VBox meant = new VBox();
    private final Button removeButton;
    private final IngredientCompletion ingredientCompletion;
    private RecipeLine line = new RecipeLine("", "");
    private Map<String, Ingredient> own = Map.of();
    private boolean showing;

    /** Actions on a line. */
    interface LineActions {
        /** The line was edited; a new amount may scale all others. */
        void typed(int index, RecipeLine line, boolean inAmount);

        /** Removes the line. */
        void remove(int index);

        /** The end of the line was reached: goes to the next. */
        void next(int index);
    }

    RecipeLineView(int index, LineActions lineActions) {
        this.index = index;
        this.actions = lineActions;
        getStyleClass().add("brew-line");
        HBox.setHgrow(name, Priority.ALWAYS);
        grams.getStyleClass().add("brew-grams");
        grams.setMinWidth(USE_PREF_SIZE);
        removeButton = TextControls.button("×", () -> lineActions.remove(index));
        removeButton.getStyleClass().add("brew-away");
        HBox row = new HBox(amount, name, grams, removeButton);
        row.setAlignment(Pos.BASELINE_LEFT);
        row.getStyleClass().add("brew-row");
        getChildren().addAll(row, fault, meant);
        ingredientCompletion = new IngredientCompletion(name, () -> own.keySet(), this::take);
        amount.textProperty().addListener(value -> typed(true));
        name.textProperty().addListener(value -> typed(false));
        amount.setOnAction(event -> name.requestFocus());
        name.setOnAction(event -> lineActions.next(index));
        name.setOnKeyReleased(
                event -> {
                    if (event.getCode() == KeyCode.DOWN) {
                        ingredientCompletion.offer();
                    }
                });
    }

    private void take(String chosen) {
        name.setText(chosen);
        name.end();
    }

    private void typed(boolean inAmount) {
        if (!showing) {
            RecipeLine now =
                    inAmount ? line.withAmount(amount.getText()) : line.withName(name.getText());
            actions.typed(index, now, inAmount);
            if (!inAmount) {
                ingredientCompletion.offer();
            }
        }
    }

    /** Shows a line. */
    void show(RecipeLine is, Map<String, Ingredient> newOwn) {
        line = is;
        own = newOwn;
        showing = true;
        InputFields.put(amount, is.amount().text());
        InputFields.put(name, is.name());
        showing = false;
        grams.setText(is.weighs().map(mass -> "= " + mass.shown()).orElse(""));
        Optional<String> wrong = is.fault();
        fault.setText(wrong.map(DisplayText::sentence).orElse(lacks(is)));
        TextControls.show(fault, !fault.getText().isEmpty());
        grams.setTooltip(
                is.reading()
                        .filter(read -> !read.parts().isEmpty())
                        .map(read -> new Tooltip(how(read.parts().get(0))))
                        .orElse(null));
        showMeant(is.name());
        showChoices(is);
        amount.setAccessibleText(Messages.of("batch.amount.of", is.name()));
        name.setAccessibleText(
                wrong.map(words -> Messages.of("batch.ingredient") + ". " + words)
                        .orElse(Messages.of("batch.ingredient")));
        removeButton.setAccessibleText(Messages.of("batch.take-out", is.name()));
    }

    /** Offers what an unclear name may mean, such as the syrup for glucose. */
    private void showMeant(String typed) {
        Optional<Phrase> note =
                Dextrose.note(typed)
                        .filter(one -> !own.containsKey(typed.strip().toLowerCase(Locale.ROOT)));
        TextControls.show(meant, note.isPresent());
        meant.getChildren().clear();
        note.ifPresent(
                one -> {
                    String words = DisplayText.sentence(one.shown());
                    FlowPane choices = InputFields.choices();
                    Dextrose.choices(typed).stream()
                            .map(name -> TextControls.button(name, () -> take(name)))
                            .forEach(choices.getChildren()::add);
                    meant.getChildren().addAll(TextControls.label(words, "brew-why"), choices);
                });
    }

    private static String how(LineReading.Part part) {
        String how = part.how().shown();
        return part.source().isEmpty() ? how : how + " (" + part.sourceShown() + ")";
    }

    /** Buttons for an amount that may mean two things, or for names like an unknown one. */
    private void showChoices(RecipeLine is) {
        boolean unknown = is.ingredient().value().isEmpty() && !is.ingredient().isBlank();
        FlowPane choices =
                InputFields.choices(
                        is.reading().map(LineReading::choices).orElse(List.of()),
                        this::choose,
                        unknown ? IngredientLine.similar(is.name(), own.values()) : List.of(),
                        one -> take(one.phrase().shown()));
        if (!choices.getChildren().isEmpty()) {
            TextControls.show(meant, true);
            meant.getChildren().add(choices);
        }
    }

    private void choose(LineReading.Choice choice) {
        amount.setText(RecipeLine.number(choice.parts().get(0).massG()) + " g");
        amount.end();
    }

    private static String lacks(RecipeLine line) {
        return line.amount().isBlank() && !line.ingredient().isBlank()
                ? Messages.of("batch.no-amount")
                : "";
    }

    void focusAmount() {
        amount.requestFocus();
    }
}
