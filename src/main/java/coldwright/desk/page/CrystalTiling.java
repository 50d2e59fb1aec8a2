package coldwright.desk.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Crystals side by side: six-cornered cells that tile a field, each shrunk about its middle until
 * the cells cover the share of it that is ice. A picture of how much ice there is, not of its
 * crystals' shapes.
 */
final class CrystalTiling {
    private static final int ACROSS = 9;
    private static final double UNEVEN = 0.3;
    private static final double ROW = Math.sqrt(3) / 2;
    private static final long SEED = 11;

    private CrystalTiling() {}

    /**
     * The cells that meet a field.
     *
     * @param width width of the field
     * @param height height of the field
     * @param iceShare share of the area to cover, 0 to 1
     * @return the corners of each cell: x, y, x, y …, in the field's own unit; some reach beyond it
     */
    static List<double[]> cells(double width, double height, double iceShare) {
        double side = width / ACROSS / Math.sqrt(3);
        double scale = Math.sqrt(iceShare);
        List<double[]> cells = new ArrayList<>();
        int rows = (int) (height / (1.5 * side)) + 2;
        for (int row = -1; row < rows; row++) {
            for (int column = -1; column <= ACROSS; column++) {
                double x = (column + (row & 1) / 2.0 + 0.5) * 2 * ROW * side;
                double y = row * 1.5 * side;
                cells.add(shrunk(cell(x, y, side), scale));
            }
        }
        return cells;
    }

    private static double[] cell(double x, double y, double side) {
        double[] corners = new double[12];
        for (int corner = 0; corner < 6; corner++) {
            double angle = Math.PI / 6 + corner * Math.PI / 3;
            double cornerX = x + side * Math.cos(angle);
            double cornerY = y + side * Math.sin(angle);
            Random moved = place(cornerX / side, cornerY / side);
            corners[2 * corner] = cornerX + (moved.nextDouble() * 2 - 1) * UNEVEN * side;
            corners[2 * corner + 1] = cornerY + (moved.nextDouble() * 2 - 1) * UNEVEN * side;
        }
        return corners;
    }

    /** Numbers that belong to a corner, so that the cells which share it move it alike. */
    private static Random place(double x, double y) {
        long key = Math.round(x * 8) * 7919 + Math.round(y * 8);
        Random random = new Random(SEED + key * 0x9E3779B97F4A7C15L);
        random.nextDouble();
        return random;
    }

    private static double[] shrunk(double[] corners, double scale) {
        double x = 0;
        double y = 0;
        for (int i = 0; i < corners.length; i += 2) {
            x += corners[i] / 6;
            y += corners[i + 1] / 6;
        }
        for (int i = 0; i < corners.length; i += 2) {
            corners[i] = x + (corners[i] - x) * scale;
            corners[i + 1] = y + (corners[i + 1] - y) * scale;
        }
        return corners;
    }
}
