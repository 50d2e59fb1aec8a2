package coldwright.science.crystal;

import java.util.List;

/**
 * One ice crystal in a field of view, cut through its middle.
 *
 * @param xUm its middle, µm from the left
 * @param yUm its middle, µm from the top
 * @param diameterUm diameter of the circle of the same area, µm
 * @param corners its outline, three corners or more, going round; may reach beyond the field
 */
public record Grain(double xUm, double yUm, double diameterUm, List<Corner> corners) {
    public Grain {
        corners = List.copyOf(corners);
    }

    /**
     * A corner of an outline.
     *
     * @param xUm µm from the left
     * @param yUm µm from the top
     */
    public record Corner(double xUm, double yUm) {}

    /** {@return area within its outline, µm²} */
    public double areaUm2() {
        return area(corners);
    }

    static double area(List<Corner> corners) {
        double twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            Corner a = corners.get(i);
            Corner b = corners.get((i + 1) % corners.size());
            twice += a.xUm * b.yUm - b.xUm * a.yUm;
        }
        return Math.abs(twice) / 2;
    }
}
