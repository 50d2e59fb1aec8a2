package coldwright.desk.batch;

import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.science.plan.BatchFault;

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

    /** The file name of the lesson that teaches what a fault is about, without its ending. */
    static Optional<String> teaching(BatchFault fault) {
        return Optional.of(
                switch (fault) {
                    case FEW_SOLIDS, MANY_SOLIDS, LITTLE_FAT, MUCH_MSNF -> "01-what-is-in-a-mix";
                    case MUCH_FAT, MUCH_AIR -> "03-too-rich";
                    case LITTLE_MSNF, MUCH_LACTOSE, NO_STABILISER, MUCH_STABILISER, MUCH_STARCH ->
                            "04-four-ways-to-steady-a-mix";
                    case MUCH_SWEETNESS, LITTLE_SWEETNESS, MUCH_SUGARS -> "05-sugar-against-ice";
                    case SMALL_BATH, MUCH_SALT -> "06-salt-twice";
                    case LOW_FREEZING_POINT, MUCH_ALCOHOL -> "07-a-spoon-of-rum";
                    case MUCH_ICE, LITTLE_ICE -> "08-reading-the-freezing-curve";
                    case COARSE_CRYSTALS -> "11-why-motion-makes-it-smooth";
                    case STORAGE -> "12-the-life-of-a-crystal";
                    case OFF_DIET, MUCH_ACID -> "14-plan-make-taste-mend";
                });
    }
}
