package coldwright.desk.brew;

import coldwright.batch.Reckoning;
import coldwright.desk.brew.model.Glance;
import coldwright.desk.say.Say;
import coldwright.science.crystal.Texture;
import coldwright.science.diagnosis.Situation;
import coldwright.text.Written;

import javafx.scene.AccessibleRole;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;

import java.util.Optional;

/** How much of a batch's water is ice when it is served, and its mean crystal to scale. */
final class SmallPicture extends Pane {
    private static final double HEIGHT_EM = 5;
    private static final double BAR_EM = 1.6;

    /** Radius of the ring that 50 µm is drawn as. */
    private static final double RING_EM = 1.4;

    private static final double MOST_EM = HEIGHT_EM / 2;

    SmallPicture(Glance now, Optional<Reckoning> all, double em) {
        setPrefSize((BAR_EM + 1.5 + 2 * MOST_EM) * em, HEIGHT_EM * em);
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
            double x = (BAR_EM + 1 + MOST_EM) * em;
            double radius = Math.min(MOST_EM, RING_EM * um.get() / Texture.SMOOTH.upToUm());
            add(new Circle(x, HEIGHT_EM * em / 2, radius * em), "small-crystal");
            add(new Circle(x, HEIGHT_EM * em / 2, RING_EM * em), "small-ring");
            setAccessibleText(Say.of("batch.beside.picture", share, Written.decimals(0, um.get())));
        } else {
            setAccessibleText(Say.of("batch.beside.picture-bare", share));
        }
    }

    private void add(Shape shape, String look) {
        shape.getStyleClass().add(look);
        getChildren().add(shape);
    }
}
