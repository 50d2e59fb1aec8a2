package coldwright.science.freezing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Expected error of a freezing point: that of each solute, weighted by its share of the dissolved
 * particles, plus that of the mixing rule.
 *
 * <p>The errors of the solutes are assumed to add up and the rule's to be independent.
 */
final class FreezingPointAccuracy {
    /** Expected error of the mixing rule for sugars and milk salts, % of the depression. */
    private static final double MIXING_PERCENT = 1;

    /** The same with alcohol or much salt among other solutes. */
    private static final double HARD_MIXING_PERCENT = 5;

    /** Salt above this strength in water makes the rule doubtful, mol/kg. */
    private static final double MUCH_SALT = 1;

    /** Error of particles counted as ideal, %. */
    private static final double IDEAL_PERCENT = 3;

    /** Half a digit of the handbook and the error of a good thermometer, °C. */
    private static final double LEAST_C = 0.01;

    private final Map<Solute, Double> sharePercent = new LinkedHashMap<>();
    private final Solution solution;
    private double idealSharePercent;

    FreezingPointAccuracy(Solution solution) {
        this.solution = solution;
        double ideal = solution.idealMol();
        double all = ideal;
        for (Solute solute : solution.massG().keySet()) {
            all += particles(solute);
        }
        if (all > 0) {
            idealSharePercent = 100 * ideal / all;
            for (Solute solute : solution.massG().keySet()) {
                sharePercent.put(solute, 100 * particles(solute) / all);
            }
        }
    }

    /** Solutes with at least this share of the particles, in the order of the enum. */
    List<Solute> withAtLeast(double percent) {
        List<Solute> some = new ArrayList<>();
        sharePercent.forEach(
                (solute, share) -> {
                    if (share >= percent) {
                        some.add(solute);
                    }
                });
        return some;
    }

    /** Whether alcohol is mixed with something else. */
    boolean alcoholMixed() {
        double alcohol = sharePercent.getOrDefault(Solute.ETHANOL, 0.0);
        return alcohol > 5 && alcohol < 99;
    }

    /** Whether much salt is mixed with something else. */
    boolean saltMixed() {
        double saltMol = 0;
        double saltPercent = 0;
        for (Map.Entry<Solute, Double> part : solution.massG().entrySet()) {
            if (part.getKey().isSalt()) {
                saltMol += part.getValue() / part.getKey().molarMassGPerMol();
                saltPercent += sharePercent.getOrDefault(part.getKey(), 0.0);
            }
        }
        return 1000 * saltMol / solution.waterG() > MUCH_SALT && saltPercent < 99;
    }

    /** Expected error of a freezing point, °C. */
    double errorC(double freezingPointC) {
        double solutes = idealSharePercent / 100 * IDEAL_PERCENT;
        double kinds = idealSharePercent > 0 ? 1 : 0;
        for (Map.Entry<Solute, Double> part : sharePercent.entrySet()) {
            if (part.getValue() > 0) {
                kinds++;
                solutes += part.getValue() / 100 * errorPercent(part.getKey(), freezingPointC);
            }
        }
        double mixing = 0;
        if (kinds > 1) {
            mixing = alcoholMixed() || saltMixed() ? HARD_MIXING_PERCENT : MIXING_PERCENT;
        }
        double percent = Math.hypot(solutes, mixing);
        return Math.max(LEAST_C, percent / 100 * -freezingPointC);
    }

    /** Whether a freezing point is colder than any published for a solute. */
    static boolean beyond(Solute solute, double freezingPointC) {
        Validity validity = solute.validity();
        return validity.measured() && freezingPointC < validity.coldestC() - 0.005;
    }

    private static double errorPercent(Solute solute, double freezingPointC) {
        double within = solute.validity().errorPercent();
        return beyond(solute, freezingPointC) ? Math.max(within, Validity.BEYOND_PERCENT) : within;
    }

    private double particles(Solute solute) {
        double mol = solution.massG().get(solute) / solute.molarMassGPerMol();
        return mol * solute.effectiveParticles()[1];
    }
}
