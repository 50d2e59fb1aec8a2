package coldwright.desk.batch;

import coldwright.science.crystal.Texture;

import javafx.scene.Node;
import javafx.scene.shape.Circle;

import java.util.List;

/** A mean crystal to scale, in a ring at the size below which crystals aren't felt. */
final class CrystalDisc {
    /** Largest radius that is drawn. */
    static final double MOST_EM = 2.5;

    /** Radius of the ring that 50 µm is drawn as. */
    private static final double RING_EM = 1.4;

    private CrystalDisc() {}

    /** Disc and ring around a point in pixels. */
    static List<Node> at(double x, double y, double meanUm, double em) {
        double radius = Math.min(MOST_EM, RING_EM * meanUm / Texture.SMOOTH.upToUm());
        return List.of(
                ShapeStyles.as(new Circle(x, y, radius * em), "small-crystal"),
                ShapeStyles.as(new Circle(x, y, RING_EM * em), "small-ring"));
    }
}
