package coldwright.desk.batch;

import coldwright.batch.RecipeIntent;
import coldwright.desk.messages.Messages;
import coldwright.science.style.Style;

import javafx.scene.control.ChoiceBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;

import java.util.function.BiConsumer;

/** What a recipe is meant to be: its style, guessed unless it is chosen, and its diet. */
final class RecipeIntentView extends FlowPane {
    private final ChoiceBox<String> style = new ChoiceBox<>();
    private final TextField diet = InputFields.field("brew-diet");
    private RecipeIntent shown;
    private boolean showing;

    /**
     * Shows choices.
     *
     * @param changed receives the changed field and the new intent
     */
    RecipeIntentView(BiConsumer<String, RecipeIntent> changed) {
        getStyleClass().add("brew-choices");
        style.getItems().add(Messages.of("batch.style.guessed"));
        for (Style one : Style.values()) {
            style.getItems().add(one.phrase().shown());
        }
        style.getSelectionModel()
                .selectedIndexProperty()
                .addListener(
                        (value, was, is) -> {
                            if (!showing && is.intValue() >= 0) {
                                String words =
                                        is.intValue() == 0
                                                ? ""
                                                : Style.values()[is.intValue() - 1].words();
                                changed.accept("", shown.withStyle(words));
                            }
                        });
        diet.setPromptText(Messages.of("batch.diet.as-it-is"));
        diet.textProperty()
                .addListener(
                        (value, was, is) -> {
                            if (!showing) {
                                changed.accept("diet", shown.withDiet(is));
                            }
                        });
        getChildren()
                .addAll(
                        InputFields.named("batch.style", style, ""),
                        InputFields.named("batch.diet", diet, ""));
    }

    /** Shows an intent. */
    void show(RecipeIntent is) {
        shown = is;
        showing = true;
        style.getSelectionModel()
                .select(is.style().value().map(one -> one.ordinal() + 1).orElse(0));
        InputFields.put(diet, is.diet().text());
        showing = false;
    }
}
