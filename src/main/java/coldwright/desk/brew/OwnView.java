package coldwright.desk.brew;

import coldwright.desk.say.Say;
import coldwright.desk.say.Words;
import coldwright.text.Written;

import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

import java.util.function.BiConsumer;

/** An ingredient of the cook's own, from its packet. */
final class OwnView extends VBox {
    private final TextField name = Fields.field("brew-name");
    private final TextField parts = Fields.field("brew-name");
    private final Label fault = Words.label("", "brew-fault");

    /**
     * Makes a slip to fill in, folded.
     *
     * @param add takes name and parts; it may refuse them with a sentence
     */
    OwnView(BiConsumer<String, String> add) {
        getStyleClass().add("brew-own");
        name.setPromptText(Say.of("batch.own.name"));
        name.setAccessibleText(Say.of("batch.own.name"));
        parts.setPromptText(Say.of("batch.own.parts"));
        parts.setAccessibleText(Say.of("batch.own.parts"));
        HBox.setHgrow(parts, Priority.ALWAYS);
        VBox slip =
                new VBox(
                        Words.label(Say.of("batch.own.how"), "note"),
                        name,
                        parts,
                        fault,
                        new HBox(Words.button(Say.of("batch.own.take"), () -> take(add))));
        slip.getStyleClass().add("brew-slip");
        Words.show(slip, false);
        Words.show(fault, false);
        parts.setOnAction(event -> take(add));
        getChildren()
                .addAll(
                        new HBox(
                                Words.button(
                                        Say.of("batch.own"),
                                        () -> {
                                            Words.show(slip, !slip.isVisible());
                                            if (slip.isVisible()) {
                                                name.requestFocus();
                                            }
                                        })),
                        slip);
    }

    private void take(BiConsumer<String, String> add) {
        try {
            add.accept(name.getText(), parts.getText());
            fault.setText("");
            name.clear();
            parts.clear();
        } catch (IllegalArgumentException e) {
            fault.setText(Written.sentence(e.getMessage()));
        }
        Words.show(fault, !fault.getText().isEmpty());
    }
}
