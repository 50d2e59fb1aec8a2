package coldwright.desk.batch;

import javafx.scene.Node;

/** Styles of drawn shapes. */
final class ShapeStyles {
    private ShapeStyles() {}

    /** Adds a style class to a shape. */
    static Node as(Node shape, String look) {
        shape.getStyleClass().add(look);
        return shape;
    }
}
