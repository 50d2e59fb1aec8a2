package coldwright.desk.batch;

import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.text.DisplayText;

import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

import java.util.function.BiConsumer;

/** Adds the cook's own ingredient from its packet's values. */
final class OwnIngredientView extends VBox {
    private final TextField name = InputFields.field("brew-name");
    private final TextField parts = InputFields.field("brew-name");
    private final Label fault = TextControls.label("", "brew-fault");

    /**
     * Makes a form, collapsed.
     *
     * @param add receives name and composition; may reject them with a sentence
     */
    OwnIngredientView(BiConsumer<String, String> add) {
        getStyleClass().add("brew-own");
        name.setPromptText(Messages.of("batch.own.name"));
        name.setAccessibleText(Messages.of("batch.own.name"));
        parts.setPromptText(Messages.of("batch.own.parts"));
        parts.setAccessibleText(Messages.of("batch.own.parts"));
        HBox.setHgrow(parts, Priority.ALWAYS);
        VBox slip =
                new VBox(
                        TextControls.label(Messages.of("batch.own.how"), "note"),
                        name,
                        parts,
                        fault,
                        new HBox(
                                TextControls.button(
                                        Messages.of("batch.own.take"), () -> take(add))));
        slip.getStyleClass().add("brew-slip");
        TextControls.show(fault, false);
        parts.setOnAction(event -> take(add));
        getChildren()
                .add(InputFields.unfolding(Messages.of("batch.own"), slip, name::requestFocus));
    }

    private void take(BiConsumer<String, String> add) {
        try {
            add.accept(name.getText(), parts.getText());
            fault.setText("");
            name.clear();
            parts.clear();
        } catch (IllegalArgumentException e) {
            fault.setText(DisplayText.sentence(e.getMessage()));
        }
        TextControls.show(fault, !fault.getText().isEmpty());
    }
}
