package coldwright.science.plan;

import coldwright.science.Band;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What freezing made of a batch: the one state that findings, crystals and plans share.
 *
 * @param freezes whether half of its water becomes ice at all
 * @param coldC temperature of bath or freezer at the start, °C
 * @param leastIceG ice that its bath needs at least, g; 0 without a bath
 * @param leastSaltG salt likewise, g
 * @param drawnUm mean size of its crystals when it is drawn, µm; empty likewise
 * @param crystalsUm mean size of its crystals after its storage, µm; empty if it doesn't freeze or
 *     nobody calculated it
 * @param steadyUm the same had it been stored steadily cold; empty if it was
 * @param storedDays how long it is stored, days, if that is known
 */
public record Frozen(
        boolean freezes,
        double coldC,
        double leastIceG,
        double leastSaltG,
        Optional<Band> drawnUm,
        Optional<Band> crystalsUm,
        Optional<Band> steadyUm,
        OptionalDouble storedDays) {
    /** No verdict on crystals of what doesn't freeze. */
    public Frozen {
        drawnUm = freezes ? drawnUm : Optional.empty();
        crystalsUm = freezes ? crystalsUm : Optional.empty();
        steadyUm = freezes ? steadyUm : Optional.empty();
    }

    /**
     * A batch that freezes in a cold of this temperature; its crystals aren't calculated.
     *
     * @param coldC °C
     * @return the state
     */
    public static Frozen in(double coldC) {
        return of(true, coldC, Optional.empty(), Optional.empty());
    }

    /** Without a bath; {@code um} are its crystals by now, {@code steadyUm} in a steady freezer. */
    public static Frozen of(
            boolean freezes, double coldC, Optional<Band> um, Optional<Band> steadyUm) {
        return new Frozen(freezes, coldC, 0, 0, um, um, steadyUm, OptionalDouble.empty());
    }
}
