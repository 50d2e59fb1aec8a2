package coldwright.desk.batch;

import coldwright.science.crystal.Texture;

import javafx.scene.Node;
import javafx.scene.shape.Circle;

import java.util.List;

/** Shapes of small pictures. */
final class SmallShapes {
    /** Largest radius that is drawn. */
    static final double MOST_EM = 2.5;

    /** Radius of the ring that 50 µm is drawn as. */
    private static final double RING_EM = 1.4;

    private SmallShapes() {}

    /** A mean crystal to scale around a point in pixels, in a ring at the size that is felt. */
    static List<Node> crystal(double x, double y, double meanUm, double em) {
        return List.of(
                as(new Circle(x, y, radius(meanUm, em)), "small-crystal"),
                as(new Circle(x, y, RING_EM * em), "small-ring"));
    }

    /** The radius of a mean crystal, in pixels. */
    static double radius(double meanUm, double em) {
        return em * Math.min(MOST_EM, RING_EM * meanUm / Texture.SMOOTH.upToUm());
    }

    /** Adds a style class to a shape. */
    static Node as(Node shape, String look) {
        shape.getStyleClass().add(look);
        return shape;
    }
}
