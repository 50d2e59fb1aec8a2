package coldwright.desk.batch;

import coldwright.batch.BatchAnalysis;
import coldwright.desk.batch.model.BatchPreview;
import coldwright.desk.messages.Messages;
import coldwright.science.diagnosis.Situation;
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

    BatchThumbnail(BatchPreview now, Optional<BatchAnalysis> all, double em) {
        setPrefSize((BAR_EM + 1.5 + 2 * CrystalDisc.MOST_EM) * em, HEIGHT_EM * em);
        setMinHeight(HEIGHT_EM * em);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        double ice = now.curve().icePercentAt(Situation.SERVING_C);
        double filled = ice / 100 * HEIGHT_EM * em;
        add(new Rectangle(0, 0, BAR_EM * em, HEIGHT_EM * em), "small-bar");
        add(new Rectangle(0, HEIGHT_EM * em - filled, BAR_EM * em, filled), "small-ice");
        String share = DisplayText.decimals(0, ice);
        Optional<Double> um =
                all.flatMap(BatchAnalysis::crystals).map(one -> one.tasted().meanUm().middle());
        if (um.isPresent()) {
            double x = (BAR_EM + 1 + CrystalDisc.MOST_EM) * em;
            getChildren().addAll(CrystalDisc.at(x, HEIGHT_EM * em / 2, um.get(), em));
            setAccessibleText(
                    Messages.of("batch.beside.picture", share, DisplayText.decimals(0, um.get())));
        } else {
            setAccessibleText(Messages.of("batch.beside.picture-bare", share));
        }
    }

    private void add(Shape shape, String look) {
        getChildren().add(ShapeStyles.as(shape, look));
    }
}
