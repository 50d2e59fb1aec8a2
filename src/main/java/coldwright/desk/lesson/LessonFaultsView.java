package coldwright.desk.lesson;

import coldwright.desk.layout.CodeSentence;
import coldwright.desk.messages.TextControls;
import coldwright.lesson.LessonFault;

import javafx.scene.layout.VBox;

import java.nio.file.Path;
import java.util.List;

/** The errors that an author has to fix in a lesson's text; hidden if there are none. */
final class LessonFaultsView extends VBox {
    LessonFaultsView() {
        getStyleClass().add("faults");
    }

    LessonFaultsView show(String head, List<LessonFault> faults) {
        getChildren().setAll(TextControls.label(head, "faults-head"));
        faults.forEach(fault -> getChildren().add(new CodeSentence(describe(fault), "fault")));
        TextControls.show(this, !faults.isEmpty());
        return this;
    }

    private static String describe(LessonFault fault) {
        return new LessonFault(nameOf(fault.file()), fault.line(), fault.words()).toString();
    }

    /** A file's name without its folders. */
    static String nameOf(String file) {
        Path name = Path.of(file).getFileName();
        return name == null ? file : name.toString();
    }
}
