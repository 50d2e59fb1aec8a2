package coldwright.desk.lesson;

import coldwright.desk.layout.CodeSentence;
import coldwright.desk.messages.TextControls;
import coldwright.lesson.LessonFault;

import javafx.scene.layout.VBox;

import java.nio.file.Path;
import java.util.List;

/** The errors that an author has to fix in a lesson's text. */
final class LessonFaultsView extends VBox {
    LessonFaultsView(String head, List<LessonFault> faults) {
        getStyleClass().add("faults");
        show(head, faults);
    }

    /** Shows other errors. */
    void show(String head, List<LessonFault> faults) {
        getChildren().clear();
        getChildren().add(TextControls.label(head, "faults-head"));
        faults.forEach(fault -> getChildren().add(new CodeSentence(describe(fault), "fault")));
    }

    private static String describe(LessonFault fault) {
        Path file = Path.of(fault.file()).getFileName();
        return new LessonFault(
                        file == null ? fault.file() : file.toString(), fault.line(), fault.words())
                .toString();
    }
}
