package coldwright.desk.brew;

import coldwright.batch.Reckoning;
import coldwright.desk.brew.model.Glance;
import coldwright.desk.say.Say;
import coldwright.science.diagnosis.Situation;
import coldwright.text.Written;

import javafx.scene.AccessibleRole;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;

import java.util.Optional;

/** How much of a batch's water is ice when it is served, and its mean crystal to scale. */
final class SmallPicture extends Pane {
    private static final double HEIGHT_EM = 5;
    private static final double BAR_EM = 1.6;

    SmallPicture(Glance now, Optional<Reckoning> all, double em) {
        setPrefSize((BAR_EM + 1.5 + 2 * CrystalDisc.MOST_EM) * em, HEIGHT_EM * em);
        setMinHeight(HEIGHT_EM * em);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        double ice = now.curve().icePercentAt(Situation.SERVING_C);
        double filled = ice / 100 * HEIGHT_EM * em;
        add(new Rectangle(0, 0, BAR_EM * em, HEIGHT_EM * em), "small-bar");
        add(new Rectangle(0, HEIGHT_EM * em - filled, BAR_EM * em, filled), "small-ice");
        String share = Written.decimals(0, ice);
        Optional<Double> um =
                all.flatMap(Reckoning::keeping).map(one -> one.tasted().meanUm().middle());
        if (um.isPresent()) {
            double x = (BAR_EM + 1 + CrystalDisc.MOST_EM) * em;
            getChildren().addAll(CrystalDisc.at(x, HEIGHT_EM * em / 2, um.get(), em));
            setAccessibleText(Say.of("batch.beside.picture", share, Written.decimals(0, um.get())));
        } else {
            setAccessibleText(Say.of("batch.beside.picture-bare", share));
        }
    }

    private void add(Shape shape, String look) {
        getChildren().add(Looks.as(shape, look));
    }
}
