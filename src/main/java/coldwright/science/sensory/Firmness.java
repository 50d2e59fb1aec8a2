package coldwright.science.sensory;

import coldwright.science.Band;
import coldwright.science.Require;
import coldwright.science.freezing.FreezingCurve;
import coldwright.science.mix.Mix;

/**
 * How firm a frozen mix is, by the ice in the whole of it.
 *
 * <p>Bands: when churning stops about half the water is ice (seen), at serving 65 to 75 % of it
 * (from memory); both turned into ice in the whole mix with the 62 % water of an ordinary ice
 * cream. The other limits are common practice, no source. They are limits of ice; fat, gums and
 * above all air make the same ice softer, so a mix beaten with no air sits at the hard end of its
 * class.
 *
 * <p>Below −20 °C the syrup itself turns stiff: the class goes up by one (by judgement).
 */
public enum Firmness {
    LIQUID("liquid", 5),
    SLUSHY("slushy", 24),
    SOFT("soft-serve", 38),
    SCOOPABLE("scoopable", 46.5),
    FIRM("firm: wait before scooping", 52),
    HARD("hard: needs a knife or time", 100);

    /** Below this temperature the syrup adds a class, °C; by judgement. */
    public static final double STIFF_SYRUP_C = -20;

    private final String words;
    private final double upToIcePercent;

    Firmness(String words, double upToIcePercent) {
        this.words = words;
        this.upToIcePercent = upToIcePercent;
    }

    /**
     * Firmness of a mix at a temperature.
     *
     * @param mix the mix
     * @param temperatureC temperature, °C, −60 to 120
     * @return the class
     */
    public static Firmness of(Mix mix, double temperatureC) {
        double ice = mix.freezingCurve().icePercentAt(temperatureC) * mix.waterPercent() / 100;
        Firmness by = ofIce(ice);
        boolean stiff = temperatureC < STIFF_SYRUP_C && by != LIQUID && by != HARD;
        return stiff ? values()[by.ordinal() + 1] : by;
    }

    /**
     * Firmness by ice alone.
     *
     * @param icePercentOfMix ice, % of the whole mix by mass, 0 to 100
     * @return the class
     */
    public static Firmness ofIce(double icePercentOfMix) {
        Require.within("icePercentOfMix", icePercentOfMix, new Require.Range(0, 100, "%"));
        for (Firmness firmness : values()) {
            if (icePercentOfMix <= firmness.upToIcePercent) {
                return firmness;
            }
        }
        return HARD;
    }

    /**
     * Where a mix can be scooped.
     *
     * @param mix the mix
     * @return °C: low where it turns firm, high where it turns soft, middle between
     * @throws IllegalArgumentException if the mix holds too little water ever to be scoopable
     */
    public static Band scoopableC(Mix mix) {
        double water = mix.waterPercent();
        FreezingCurve curve = mix.freezingCurve();
        double softEnd = 100 * SOFT.upToIcePercent / water;
        double firmEnd = 100 * SCOOPABLE.upToIcePercent / water;
        if (firmEnd > 99) {
            throw new IllegalArgumentException(
                    "waterPercent is %s; it must be above 47 %% for ice enough to scoop: this mix stays soft at any cold"
                            .formatted(Require.spoken(Math.round(water * 10) / 10.0)));
        }
        double warm = curve.temperatureAtIcePercentC(softEnd);
        double cold = curve.temperatureAtIcePercentC(firmEnd);
        return new Band(cold, (warm + cold) / 2, warm);
    }

    /** In a cook's words. @return such as {@code scoopable} */
    public String words() {
        return words;
    }

    /** Most ice of this class. @return % of the whole mix by mass */
    public double upToIcePercent() {
        return upToIcePercent;
    }
}
