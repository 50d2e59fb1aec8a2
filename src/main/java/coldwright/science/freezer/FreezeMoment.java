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

    /**
     * Time since the start.
     *
     * @return minutes
     */
    public double minute() {
        return minute;
    }

    /**
     * Mean ice.
     *
     * @return % of the water
     */
    public double icePercent() {
        return icePercent;
    }

    /**
     * Temperature in the middle, or of the whole while it is moved.
     *
     * @return °C
     */
    public double middleC() {
        return temperaturesC[0];
    }

    /**
     * Temperature of the content at the wall.
     *
     * @return °C
     */
    public double wallC() {
        return temperaturesC[temperaturesC.length - 2];
    }

    /**
     * Temperatures of the content, evenly spaced from the middle to the wall while it is still; of
     * the whole and at the wall while it is moved.
     *
     * @return °C, two or more
     */
    double[] insideC() {
        return Arrays.copyOf(temperaturesC, temperaturesC.length - 1);
    }

    /**
     * Temperature of bath or freezer.
     *
     * @return °C
     */
    public double coldC() {
        return temperaturesC[temperaturesC.length - 1];
    }

    /**
     * Heat through the wall.
     *
     * @return W/m²
     */
    public double fluxWPerM2() {
        return fluxWPerM2;
    }

    /**
     * Ice left in the bath.
     *
     * @return g, or not a number without a bath
     */
    public double bathIceG() {
        return bathIceG;
    }

    @Override
    public String toString() {
        return Phrase.of("science.freezer", "moment", minute, icePercent, middleC(), coldC())
                .english();
    }
}
