package coldwright.published;

/** What the project set itself to reach, before anything was measured. */
public enum Goal {
    FREEZING_SMALL("freezing points down to 2 °C of depression", 0.05, "°C"),
    FREEZING_LARGE("freezing points beyond 2 °C of depression", 2, "%"),
    FREEZING_ALCOHOL("freezing points of alcohol beyond 2 °C of depression", 0.4, "°C"),
    MIXES("freezing points of mixes", 0.1, "°C"),
    BALANCE("worked balancing problems", 0.01, "kg in 100 kg"),
    STEFAN_NEUMANN("the exact solutions for a freezing and a cooling slab", 0.5, "%"),
    BATH("the bath against the phase diagram", 0.2, "°C");

    private final String words;
    private final double size;
    private final String unit;

    Goal(String words, double size, String unit) {
        this.words = words;
        this.size = size;
        this.unit = unit;
    }

    /** What it is a goal for. */
    public String words() {
        return words;
    }

    /** The largest error that meets it, in its unit. */
    public double size() {
        return size;
    }

    /** Unit of the error. */
    public String unit() {
        return unit;
    }

    /** Whether the error is a share of the published value. */
    public boolean isShare() {
        return unit.equals("%");
    }
}
