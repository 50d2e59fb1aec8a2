package coldwright.desk.page;

import coldwright.desk.model.LessonModel;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;

import javafx.scene.layout.VBox;

import java.nio.file.Path;

/** Says that the page follows a lesson's file while its author writes it, until that is ended. */
final class WritingView extends VBox {
    WritingView(LessonModel model, Runnable end) {
        getStyleClass().add("writing");
        Path name = Path.of(model.lesson().file()).getFileName();
        String file = name == null ? model.lesson().file() : name.toString();
        getChildren()
                .addAll(
                        new Sentence(Say.of("writing.follows", file), "writing-words"),
                        Words.button(Say.of("writing.end"), end));
        Words.shown(this, model.written());
    }
}
