package coldwright.desk.batch;

import coldwright.batch.BatchReport;
import coldwright.batch.Fact;
import coldwright.desk.messages.Messages;
import coldwright.text.DisplayText;

import javafx.scene.AccessibleRole;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;

import java.util.Optional;

/** The share of a batch's water that is ice at serving, and its mean crystal to scale. */
final class BatchThumbnail extends Pane {
    private static final double HEIGHT_EM = 5;
    private static final double BAR_EM = 1.6;

    BatchThumbnail(BatchReport report, double em) {
        setPrefSize((BAR_EM + 1.5 + 2 * SmallShapes.MOST_EM) * em, HEIGHT_EM * em);
        setMinHeight(HEIGHT_EM * em);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        double ice = report.fact("serving_ice_percent_of_water").number();
        double filled = ice / 100 * HEIGHT_EM * em;
        add(new Rectangle(0, 0, BAR_EM * em, HEIGHT_EM * em), "small-bar");
        add(new Rectangle(0, HEIGHT_EM * em - filled, BAR_EM * em, filled), "small-ice");
        String share = DisplayText.decimals(0, ice);
        Optional<Double> um = report.find("tasted_mean_micrometres").map(Fact::number);
        if (um.isPresent()) {
            double x = (BAR_EM + 1 + SmallShapes.MOST_EM) * em;
            getChildren().addAll(SmallShapes.crystal(x, HEIGHT_EM * em / 2, um.get(), em));
            setAccessibleText(
                    Messages.of("batch.beside.picture", share, DisplayText.decimals(0, um.get())));
        } else {
            setAccessibleText(Messages.of("batch.beside.picture-bare", share));
        }
    }

    private void add(Shape shape, String look) {
        getChildren().add(SmallShapes.as(shape, look));
    }
}
