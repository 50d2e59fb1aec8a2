package coldwright.desk.batch;

import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;

import javafx.scene.Node;

import java.util.Optional;

/**
 * A link from the batch page to a lesson of the course.
 *
 * @param title the lesson's title
 * @param open opens it
 */
public record CourseLink(String title, Runnable open) {
    /** The lessons of the course. */
    public interface Course {
        /** The lesson of that file name, without its ending; empty if it isn't there. */
        Optional<CourseLink> named(String name);
    }

    /** A button that opens the lesson. */
    Node button() {
        return TextControls.button(Messages.of("batch.why.lesson", title), open);
    }
}
