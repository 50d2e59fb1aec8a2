package coldwright.science.emulsion;

import coldwright.science.Require;

/**
 * A microscope's field of view in a liquid, in focus to a certain depth.
 *
 * @param widthUm width of the field, µm, 1 to 2000
 * @param heightUm height of the field, µm, 1 to 2000
 * @param depthUm depth in focus, µm, 0.1 to 500; a globule is visible if its middle is in it
 */
public record Slide(double widthUm, double heightUm, double depthUm) {
    /** Whole milk or mix under a strong lens: 100 × 70 µm, 2 µm deep (judgement). */
    public static final Slide USUAL = new Slide(100, 70, 2);

    public Slide {
        Require.within("widthUm", widthUm, new Require.Range(1, 2000, "µm"));
        Require.within("heightUm", heightUm, new Require.Range(1, 2000, "µm"));
        Require.within("depthUm", depthUm, new Require.Range(0.1, 500, "µm"));
    }

    /** {@return volume in focus, µm³} */
    public double volumeUm3() {
        return widthUm * heightUm * depthUm;
    }

    /** The same, so many times as wide and high, to the same depth. */
    public Slide times(double times) {
        return new Slide(widthUm * times, heightUm * times, depthUm);
    }
}
