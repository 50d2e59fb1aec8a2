package coldwright.desk.batch;

import coldwright.batch.Recipe;
import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.batch.model.BatchesModel;
import coldwright.desk.batch.search.ProposedChange;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;

import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/**
 * A proposed change with its side effects and its buttons. Once the recipe is another one, it is
 * dimmed and can't be taken.
 */
final class ProposedChangeView extends VBox {
    private final BatchModel batch;
    private final ProposedChange change;
    private final FlowPane deeds = InputFields.choices();

    /**
     * Shows a change, without buttons yet.
     *
     * @param batch the batch that it changes
     * @param was the recipe that it was searched for
     */
    ProposedChangeView(BatchModel batch, Recipe was, ProposedChange change) {
        this.batch = batch;
        this.change = change;
        getStyleClass().add("brew-offer");
        InputFields.say(this, change.words(), "brew-mend");
        if (!change.besides().isEmpty()) {
            String besides = String.join("; ", change.besides());
            InputFields.say(this, Messages.of("batch.wish.besides", besides), "brew-why");
        }
        getChildren().add(deeds);
        belongsTo(this, batch, was);
    }

    /** Adds a button that changes the batch, and then does what is given. */
    ProposedChangeView taking(Runnable then) {
        return deed(
                "batch.take",
                () -> {
                    batch.take(change.recipe(), change.words());
                    then.run();
                });
    }

    /** Adds a button that makes the next batch from it. */
    ProposedChangeView making(BatchesModel batches, String why) {
        return deed("batch.take-next", () -> batches.next(batch, change.recipe(), why));
    }

    /** A button whose name for screen readers says what it does. */
    private ProposedChangeView deed(String key, Runnable action) {
        Button deed = TextControls.button(Messages.of(key), action);
        deed.setAccessibleText(Messages.of(key) + ": " + change.words());
        deeds.getChildren().add(deed);
        return this;
    }

    /** Disables a node, which dims it, while the batch's recipe is another one. */
    static void belongsTo(Node node, BatchModel batch, Recipe was) {
        node.disableProperty()
                .bind(
                        Bindings.createBooleanBinding(
                                () -> !batch.recipe().get().equals(was), batch.recipe()));
    }
}
