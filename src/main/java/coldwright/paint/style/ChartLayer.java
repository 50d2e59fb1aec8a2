package coldwright.paint.style;

import java.awt.Graphics2D;

/** Something drawn over the grid, in the coordinates of the figure. */
@FunctionalInterface
public interface ChartLayer {
    void paint(Graphics2D g);
}
