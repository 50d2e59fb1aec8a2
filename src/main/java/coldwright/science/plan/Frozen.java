package coldwright.science.plan;

import coldwright.science.Band;

import java.util.Optional;

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
 */
public record Frozen(
        boolean freezes,
        double coldC,
        double leastIceG,
        double leastSaltG,
        Optional<Band> drawnUm,
        Optional<Band> crystalsUm,
        Optional<Band> steadyUm) {
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
        return new Frozen(true, coldC, 0, 0, Optional.empty(), Optional.empty(), Optional.empty());
    }
}
