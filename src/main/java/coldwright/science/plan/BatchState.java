package coldwright.science.plan;

import coldwright.science.freezing.FreezingCurve;
import coldwright.science.mix.Mix;
import coldwright.science.sensory.Firmness;
import coldwright.science.style.Diet;
import coldwright.science.style.Pieces;
import coldwright.science.style.Quantity;
import coldwright.science.style.Style;

/**
 * A batch as it is judged: what is in it, what it is meant to be, what it must not contain, and
 * what freezing makes of it.
 *
 * @param pieces mix and pieces
 * @param style what it is meant to be
 * @param diet what it must not contain
 * @param making how it is made
 * @param frozen what freezing made of it
 * @param curve the freezing curve of its mix
 */
public record BatchState(
        Pieces pieces, Style style, Diet diet, Making making, Frozen frozen, FreezingCurve curve) {
    /**
     * A batch, frozen.
     *
     * @param batch everything in it
     * @param style what it is meant to be
     * @param diet what it must not contain
     * @param making how it is made
     * @param kitchen freezes it
     * @return its state
     */
    public static BatchState of(Mix batch, Style style, Diet diet, Making making, Kitchen kitchen) {
        return of(batch, style, diet, making, kitchen.freeze(batch, making));
    }

    static BatchState of(Mix batch, Style style, Diet diet, Making making, Frozen frozen) {
        Pieces pieces = Pieces.of(batch);
        return new BatchState(pieces, style, diet, making, frozen, pieces.mix().freezingCurve());
    }

    /** {@return everything in it} */
    public Mix batch() {
        return pieces.with(pieces.mix());
    }

    BatchState with(Mix batch) {
        return of(batch, style, diet, making, frozen);
    }

    BatchState with(Making other, Frozen by) {
        return new BatchState(pieces, style, diet, other, by, curve);
    }

    /**
     * The same served at another temperature.
     *
     * @param celsius °C
     * @return its state; it needn't be frozen again
     */
    public BatchState servedAt(double celsius) {
        return with(making.servedAt(celsius), frozen);
    }

    BatchState as(Style other) {
        return new BatchState(
                pieces, other, diet, making.servedAt(other.servingC()), frozen, curve);
    }

    /**
     * Its value of a quantity.
     *
     * @param quantity the quantity
     * @return in its unit
     */
    public double of(Quantity quantity) {
        Mix mix = pieces.mix();
        return switch (quantity) {
            case ICE -> Firmness.spoonIcePercent(mix, curve, making.servingC());
            case ICE_IN_THE_COLD -> curve.icePercentAt(frozen.coldC());
            case OVERRUN -> making.overrunPercent();
            case SERVING -> making.servingC();
            default -> quantity.of(mix);
        };
    }
}
