package coldwright.desk.lesson;

import coldwright.desk.layout.CodeSentence;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;

import javafx.scene.layout.VBox;

import java.nio.file.Path;

/**
 * Shows that the page follows a lesson's file while its author writes it, with a button to stop.
 */
final class LessonFollowingView extends VBox {
    LessonFollowingView(LessonModel model, Runnable end) {
        getStyleClass().add("following");
        Path name = Path.of(model.lesson().file()).getFileName();
        String file = name == null ? model.lesson().file() : name.toString();
        getChildren()
                .addAll(
                        new CodeSentence(Messages.of("writing.follows", file), "following-words"),
                        TextControls.button(Messages.of("writing.end"), end));
        TextControls.shown(this, model.written());
    }
}
