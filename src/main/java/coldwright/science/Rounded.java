package coldwright.science;

/** Numbers rounded for a sentence. */
public final class Rounded {
    private Rounded() {}

    /** {@return the nearest tenth} */
    public static double tenth(double value) {
        return Math.round(value * 10) / 10.0;
    }

    /** {@return the nearest hundredth} */
    public static double hundredth(double value) {
        return Math.round(value * 100) / 100.0;
    }
}
