package coldwright.science.plan;

import coldwright.science.style.StyleQuantity;
import coldwright.science.style.StyleRange;
import coldwright.words.Worded;

/**
 * A kind of fault. Its weight ranks unlike faults against each other (judgement): what can't be
 * eaten or made first, what is only less good last.
 */
public enum BatchFault implements Worded {
    /** The bath hasn't enough ice and salt to freeze it. */
    SMALL_BATH(null, false, 1),
    /** Its freezing point is too low for the cold that freezes it. */
    LOW_FREEZING_POINT(StyleQuantity.ICE_IN_THE_COLD, false, 2),
    /** It contains what its diet leaves out. */
    OFF_DIET(null, false, 1),
    MUCH_SALT(StyleQuantity.SALT, true, 1.5),
    MUCH_ACID(StyleQuantity.ACID, true, 1),
    MUCH_ALCOHOL(StyleQuantity.ALCOHOL, true, 0.8),
    MUCH_ICE(StyleQuantity.ICE, true, 1),
    LITTLE_ICE(StyleQuantity.ICE, false, 1),
    COARSE_CRYSTALS(null, true, 1),
    /** Varying temperature or warming in storage. */
    STORAGE(null, true, 1),
    MUCH_SWEETNESS(StyleQuantity.SWEETNESS, true, 1),
    LITTLE_SWEETNESS(StyleQuantity.SWEETNESS, false, 0.8),
    FEW_SOLIDS(StyleQuantity.SOLIDS, false, 0.8),
    MANY_SOLIDS(StyleQuantity.SOLIDS, true, 0.6),
    MUCH_FAT(StyleQuantity.FAT, true, 1),
    LITTLE_FAT(StyleQuantity.FAT, false, 0.5),
    MUCH_MSNF(StyleQuantity.MSNF, true, 0.5),
    LITTLE_MSNF(StyleQuantity.MSNF, false, 0.7),
    /** More milk sugar than stays dissolved in storage. */
    MUCH_LACTOSE(StyleQuantity.LACTOSE, true, 1),
    MUCH_SUGARS(StyleQuantity.SUGARS, true, 0.9),
    NO_STABILISER(StyleQuantity.STABILITY, false, 0.4),
    MUCH_STABILISER(StyleQuantity.GUM, true, 1),
    MUCH_STARCH(StyleQuantity.STARCH, true, 0.8),
    MUCH_AIR(StyleQuantity.OVERRUN, true, 0.8);

    private final StyleQuantity quantity;
    private final boolean above;
    private final double weight;

    BatchFault(StyleQuantity quantity, boolean above, double weight) {
        this.quantity = quantity;
        this.above = above;
        this.weight = weight;
    }

    /** Its quantity; null where none decides. */
    StyleQuantity quantity() {
        return quantity;
    }

    /** Whether too much is the fault. */
    boolean above() {
        return above;
    }

    double weight() {
        return weight;
    }

    /** {@return file name of the lesson that teaches it, without its ending} */
    public String lesson() {
        return switch (this) {
            case OFF_DIET, FEW_SOLIDS, MANY_SOLIDS, LITTLE_MSNF -> "01-what-is-in-a-mix";
            case LITTLE_FAT -> "02-an-emulsion-you-can-drink";
            case MUCH_FAT -> "03-too-rich";
            case NO_STABILISER, MUCH_STABILISER, MUCH_STARCH, MUCH_MSNF, MUCH_LACTOSE ->
                    "04-four-ways-to-steady-a-mix";
            case MUCH_SWEETNESS, LITTLE_SWEETNESS, MUCH_SUGARS -> "05-sugar-against-ice";
            case MUCH_SALT -> "06-salt-twice";
            case LOW_FREEZING_POINT, MUCH_ALCOHOL -> "07-a-spoon-of-rum";
            case MUCH_ICE, LITTLE_ICE -> "08-reading-the-freezing-curve";
            case SMALL_BATH -> "09-cold-has-to-come-from-somewhere";
            case COARSE_CRYSTALS -> "11-why-motion-makes-it-smooth";
            case STORAGE -> "12-the-life-of-a-crystal";
            case MUCH_ACID, MUCH_AIR -> "14-plan-make-taste-mend";
        };
    }

    /** {@return true if a quantity of the mix decides} */
    public boolean inRecipe() {
        return quantity != null && !ofMaking();
    }

    /**
     * A batch judged so that its quantity must move by a step, away from this fault.
     *
     * @return the state to plan for
     */
    public BatchState eased(BatchState state) {
        double value = state.of(quantity);
        StyleRange range = state.range(quantity);
        return above
                ? state.wanting(
                        quantity,
                        Math.min(range.least(), value - quantity.step()),
                        value - quantity.step())
                : state.wanting(
                        quantity,
                        value + quantity.step(),
                        Math.max(range.most(), value + quantity.step()));
    }

    /** Whether only the making can resolve it, never an ingredient. */
    boolean ofMaking() {
        return switch (this) {
            case SMALL_BATH, COARSE_CRYSTALS, STORAGE, MUCH_AIR -> true;
            default -> false;
        };
    }
}
