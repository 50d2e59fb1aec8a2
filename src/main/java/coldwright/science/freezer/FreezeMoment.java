package coldwright.science.freezer;

import coldwright.words.Phrase;

import java.util.Arrays;

/**
 * The state of a batch at one time while it freezes.
 *
 * @param minute time since the start, minutes
 * @param icePercent mean ice, % of the water
 * @param temperaturesC of the content, evenly spaced from the middle to the wall while it is still,
 *     else of the whole and at the wall; then of bath or freezer, °C, three or more
 * @param fluxWPerM2 heat through the wall, W/m²
 * @param bathIceG ice left in the bath, g, or not a number without a bath
 */
public record FreezeMoment(
        double minute,
        double icePercent,
        double[] temperaturesC,
        double fluxWPerM2,
        double bathIceG) {
    /** {@return temperature in the middle, or of the whole while it is moved, °C} */
    public double middleC() {
        return temperaturesC[0];
    }

    /** {@return temperature of the content at the wall, °C} */
    public double wallC() {
        return temperaturesC[temperaturesC.length - 2];
    }

    /** {@return all but the last of {@link #temperaturesC}} */
    double[] insideC() {
        return Arrays.copyOf(temperaturesC, temperaturesC.length - 1);
    }

    /** {@return temperature of bath or freezer, °C} */
    public double coldC() {
        return temperaturesC[temperaturesC.length - 1];
    }

    @Override
    public String toString() {
        return Phrase.of("science.freezer", "moment", minute, icePercent, middleC(), coldC())
                .english();
    }
}
