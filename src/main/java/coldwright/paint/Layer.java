package coldwright.paint;

import java.awt.Graphics2D;

/** Something drawn over the grid, in the coordinates of the sheet. */
@FunctionalInterface
interface Layer {
    void paint(Graphics2D g);
}
