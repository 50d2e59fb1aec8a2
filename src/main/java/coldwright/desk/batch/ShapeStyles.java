package coldwright.desk.batch;

import javafx.scene.Node;

/** How drawn shapes look. */
final class ShapeStyles {
    private ShapeStyles() {}

    /** The shape, with its name in the style sheet. */
    static Node as(Node shape, String look) {
        shape.getStyleClass().add(look);
        return shape;
    }
}
