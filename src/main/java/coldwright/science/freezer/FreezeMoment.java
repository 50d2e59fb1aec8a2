package coldwright.science.freezer;

import coldwright.words.Phrase;

import java.util.Arrays;

/** The state of a batch at one time while it freezes. */
public final class FreezeMoment {
    private final double minute;
    private final double icePercent;
    private final double[] temperaturesC;
    private final double fluxWPerM2;
    private final double bathIceG;

    FreezeMoment(
            double minute,
            double icePercent,
            double[] temperaturesC,
            double fluxWPerM2,
            double bathIceG) {
        this.minute = minute;
        this.icePercent = icePercent;
        this.temperaturesC = temperaturesC;
        this.fluxWPerM2 = fluxWPerM2;
        this.bathIceG = bathIceG;
    }

    /** {@return time since the start, minutes} */
    public double minute() {
        return minute;
    }

    /** {@return mean ice, % of the water} */
    public double icePercent() {
        return icePercent;
    }

    /** {@return temperature in the middle, or of the whole while it is moved, °C} */
    public double middleC() {
        return temperaturesC[0];
    }

    /** {@return temperature of the content at the wall, °C} */
    public double wallC() {
        return temperaturesC[temperaturesC.length - 2];
    }

    /**
     * {@return temperatures of the content, evenly spaced from the middle to the wall while it is
     * still; of the whole and at the wall while it is moved, °C, two or more}
     */
    double[] insideC() {
        return Arrays.copyOf(temperaturesC, temperaturesC.length - 1);
    }

    /** {@return temperature of bath or freezer, °C} */
    public double coldC() {
        return temperaturesC[temperaturesC.length - 1];
    }

    /** {@return heat through the wall, W/m²} */
    public double fluxWPerM2() {
        return fluxWPerM2;
    }

    /** {@return ice left in the bath, g, or not a number without a bath} */
    public double bathIceG() {
        return bathIceG;
    }

    @Override
    public String toString() {
        return Phrase.of("science.freezer", "moment", minute, icePercent, middleC(), coldC())
                .english();
    }
}
