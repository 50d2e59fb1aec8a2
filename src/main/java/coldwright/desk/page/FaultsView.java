package coldwright.desk.page;

import coldwright.desk.say.Words;
import coldwright.lesson.Fault;

import javafx.scene.layout.VBox;

import java.nio.file.Path;
import java.util.List;

/** What its author has to mend in a lesson's text. */
final class FaultsView extends VBox {
    FaultsView(String head, List<Fault> faults) {
        getStyleClass().add("faults");
        show(head, faults);
    }

    /** Says something else. */
    void show(String head, List<Fault> faults) {
        getChildren().clear();
        getChildren().add(Words.label(head, "faults-head"));
        faults.forEach(fault -> getChildren().add(new Sentence(told(fault), "fault")));
    }

    private static String told(Fault fault) {
        Path file = Path.of(fault.file()).getFileName();
        return new Fault(file == null ? fault.file() : file.toString(), fault.line(), fault.words())
                .toString();
    }
}
