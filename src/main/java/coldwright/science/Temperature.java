package coldwright.science;

/** Temperature constants and conversions; all other code uses °C. */
public final class Temperature {
    /** 0 °C in K, exact by definition (BIPM, The International System of Units, 9th ed., 2019). */
    public static final double ZERO_C_IN_K = 273.15;

    /** Coldest temperature that any model here accepts, °C. */
    public static final double COLDEST_C = -60;

    /** Warmest temperature that any model here accepts, °C. */
    public static final double WARMEST_C = 120;

    /** A home freezer, °C (0 °F, the usual advice for food storage). */
    public static final double HOME_FREEZER_C = -18;

    /** Gas constant, J/(mol·K) (CODATA 2018, exact; ten digits). */
    public static final double GAS_J_PER_MOLK = 8.314462618;

    private Temperature() {}

    /**
     * Converts °C to K.
     *
     * @param temperatureC temperature, °C
     */
    public static double kelvin(double temperatureC) {
        return temperatureC + ZERO_C_IN_K;
    }

    /**
     * Converts K to °C.
     *
     * @param temperatureK temperature, K
     */
    public static double celsius(double temperatureK) {
        return temperatureK - ZERO_C_IN_K;
    }

    /**
     * Checks that a temperature is in the range of the models.
     *
     * @param name its name in the message
     * @param temperatureC temperature, °C, {@value #COLDEST_C} to {@value #WARMEST_C}
     */
    public static double require(String name, double temperatureC) {
        if (temperatureC >= COLDEST_C && temperatureC <= WARMEST_C) {
            return temperatureC;
        }
        throw new IllegalArgumentException(
                "%s is %s; it must be between %s and %s °C%s"
                        .formatted(
                                name,
                                Require.format(temperatureC),
                                Require.format(COLDEST_C),
                                Require.format(WARMEST_C),
                                temperatureC > WARMEST_C && temperatureC < WARMEST_C + ZERO_C_IN_K
                                        ? ": was this kelvin or °F?"
                                        : ""));
    }
}
