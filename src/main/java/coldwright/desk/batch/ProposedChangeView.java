package coldwright.desk.batch;

import coldwright.batch.Recipe;
import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.batch.search.ProposedChange;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;

import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/**
 * A proposed change with its side effects and its buttons. Once the recipe is another one, it is
 * dimmed and can't be taken.
 */
final class ProposedChangeView extends VBox {
    /**
     * Shows a change.
     *
     * @param batch the batch that it changes
     * @param was the recipe that it was searched for
     * @param change the change
     * @param deeds buttons that take it
     */
    ProposedChangeView(BatchModel batch, Recipe was, ProposedChange change, Node... deeds) {
        getStyleClass().add("brew-offer");
        getChildren().add(TextControls.label(change.words(), "brew-mend"));
        if (!change.besides().isEmpty()) {
            String besides = String.join("; ", change.besides());
            getChildren()
                    .add(
                            TextControls.label(
                                    Messages.of("batch.wish.besides", besides), "brew-why"));
        }
        getChildren().add(InputFields.choices(deeds));
        belongsTo(this, batch, was);
    }

    /** Disables a node, which dims it, while the batch's recipe is another one. */
    static void belongsTo(Node node, BatchModel batch, Recipe was) {
        node.disableProperty()
                .bind(
                        Bindings.createBooleanBinding(
                                () -> !batch.recipe().get().equals(was), batch.recipe()));
    }

    /** A button whose name for screen readers says what it does. */
    static Button deed(String key, String change, Runnable action) {
        Button deed = TextControls.button(Messages.of(key), action);
        deed.setAccessibleText(Messages.of(key) + ": " + change);
        return deed;
    }
}
