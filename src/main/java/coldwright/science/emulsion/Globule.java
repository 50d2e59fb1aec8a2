package coldwright.science.emulsion;

/**
 * One fat globule as a microscope sees it.
 *
 * @param xUm its middle, µm from the left
 * @param yUm its middle, µm from the top
 * @param radiusUm its radius, µm
 * @param clumped whether it has stuck to others
 */
public record Globule(double xUm, double yUm, double radiusUm, boolean clumped) {
    /** {@return its fat, µm³} */
    public double volumeUm3() {
        return 4 * Math.PI / 3 * radiusUm * radiusUm * radiusUm;
    }
}
