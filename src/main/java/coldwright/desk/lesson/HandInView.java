package coldwright.desk.lesson;

import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;

import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

import java.util.function.Consumer;

/** At the end of a lesson: exports the learner's whole work as a file for the teacher. */
final class HandInView extends VBox {
    /** {@code handIn} receives the learner's name and writes the file. */
    HandInView(Consumer<String> handIn) {
        getStyleClass().add("hand-in");
        TextField name = TextControls.styled(new TextField(), "number-field");
        name.setPromptText(Messages.of("hand-in.name"));
        name.setAccessibleText(Messages.of("hand-in.name"));
        name.setPrefColumnCount(16);
        Button save =
                TextControls.command("hand-in.save", () -> handIn.accept(name.getText().strip()));
        save.disableProperty().bind(name.textProperty().isEmpty());
        HBox row = TextControls.row("number-row", name, save);
        getChildren().addAll(TextControls.label(Messages.of("hand-in.what"), "note"), row);
    }
}
