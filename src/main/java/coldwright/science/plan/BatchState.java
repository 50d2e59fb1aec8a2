package coldwright.science.plan;

import coldwright.science.Band;
import coldwright.science.freezing.FreezingCurve;
import coldwright.science.mix.Mix;
import coldwright.science.sensory.Firmness;
import coldwright.science.style.DietRules;
import coldwright.science.style.Pieces;
import coldwright.science.style.Style;
import coldwright.science.style.StyleQuantity;
import coldwright.science.style.StyleRange;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

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
 * @param wanted ranges that a cook asked for, in place of the style's
 */
public record BatchState(
        Pieces pieces,
        Style style,
        DietRules diet,
        Making making,
        Frozen frozen,
        FreezingCurve curve,
        Map<StyleQuantity, StyleRange> wanted) {
    /** Copies the map. */
    public BatchState {
        wanted = Map.copyOf(wanted);
    }

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
    public static BatchState of(
            Mix batch, Style style, DietRules diet, Making making, Kitchen kitchen) {
        return of(batch, style, diet, making, kitchen.freeze(batch, making));
    }

    /**
     * A batch that is frozen already.
     *
     * @param batch everything in it
     * @param style what it is meant to be
     * @param diet what it must not contain
     * @param making how it was made
     * @param frozen what that made of it
     * @return its state
     */
    public static BatchState of(
            Mix batch, Style style, DietRules diet, Making making, Frozen frozen) {
        Pieces pieces = Pieces.of(batch);
        FreezingCurve curve = pieces.mix().freezingCurve();
        return new BatchState(pieces, style, diet, making, frozen, curve, Map.of());
    }

    /** {@return everything in it} */
    public Mix batch() {
        return pieces.with(pieces.mix());
    }

    BatchState with(Mix batch) {
        Pieces changed = Pieces.of(batch);
        FreezingCurve by = changed.mix().freezingCurve();
        return new BatchState(changed, style, diet, making, frozen, by, wanted);
    }

    BatchState with(Making other, Frozen by) {
        return new BatchState(pieces, style, diet, other, by, curve, wanted);
    }

    /**
     * The same with a range that a cook asks for.
     *
     * @param least no less than this, in its unit
     * @param most no more than this, in its unit
     * @return its state: outside that range is a fault, whatever the style says
     */
    public BatchState wanting(StyleQuantity quantity, double least, double most) {
        Map<StyleQuantity, StyleRange> all = new EnumMap<>(StyleQuantity.class);
        all.putAll(wanted);
        all.put(quantity, new StyleRange(least, most, "asked"));
        return new BatchState(pieces, style, diet, making, frozen, curve, all);
    }

    /** The range that decides whether a quantity is a fault. */
    StyleRange range(StyleQuantity quantity) {
        return wanted.containsKey(quantity) ? wanted.get(quantity) : Faults.range(quantity, this);
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
        Making served = making.servedAt(other.servingC());
        return new BatchState(pieces, other, diet, served, frozen, curve, wanted);
    }

    /** What is eaten at once has the crystals that it was drawn with. */
    private Optional<Band> eatenUm() {
        return style.eaten() == Style.Eaten.AT_ONCE ? frozen.drawnUm() : frozen.crystalsUm();
    }

    /** {@return in its unit} */
    public double of(StyleQuantity quantity) {
        Mix mix = pieces.mix();
        return switch (quantity) {
            case ICE -> Firmness.spoonIcePercent(mix, curve, making.servingC());
            case ICE_IN_THE_COLD -> curve.icePercentAt(frozen.coldC());
            case OVERRUN -> making.overrunPercent();
            case SERVING -> making.servingC();
            case CRYSTALS -> eatenUm().map(Band::middle).orElse(0.0);
            default -> quantity.of(mix);
        };
    }
}
