package coldwright.science.freezing;

import java.util.Map;

/**
 * How much water the solutes of a solution keep liquid beside ice at each temperature.
 *
 * <p>Sugars, sugar alcohols, acids and alcohol together: Zdanovskii's rule (R. H. Stokes and R. A.
 * Robinson, J. Phys. Chem. 70 (1966) 2126; from memory). Solutions that each rest with ice at the
 * same temperature still do so when poured together, so at temperature t every solute keeps the
 * water that it would keep alone:
 *
 * <pre>liquid water = Σ n / m°(t),   m°(t) the molality at which the solute alone freezes at t
 * </pre>
 *
 * <p>It is exact for two solutes of one kind, where Ross's product of activities is not, and every
 * m° is read at the mixture's own temperature, so no heat of dilution is lost. For 8 mixtures of
 * two non-electrolytes it was found to agree well (Chin. J. Chem. Eng. 12 (2004) 470, abstract
 * read). Salts among themselves follow the same rule (D. Rowland and P. M. May, J. Chem. Eng. Data
 * 57 (2012), abstract read).
 *
 * <p>Molecules, salts and ideal particles with each other: see {@link Blend}.
 *
 * <p>Expected error: 2 % of the depression for sugars and milk salts, 5 % with alcohol or much
 * salt.
 */
final class IceLine {
    /** Effective particles of the whole solution, mol, at each node of the grid. */
    private final double[] particles;

    /** Where salts that are alone freeze out wholly, °C; the coldest served otherwise. */
    private final double eutecticC;

    private final boolean empty;

    private IceLine(Solution solution, boolean saltCrystallises) {
        double ideal = 0;
        for (double millimol : solution.idealMillimol().values()) {
            ideal += millimol / 1000;
        }
        double[] molecules = null;
        double[] salts = null;
        double coldestC = 0;
        for (Map.Entry<Solute, Double> part : solution.massG().entrySet()) {
            Solute solute = part.getKey();
            double mol = part.getValue() / solute.molarMassGPerMol();
            if (mol > 0 && solute.isSalt()) {
                salts = added(salts, mol, solute);
                coldestC = Math.min(coldestC, solute.eutectic().temperatureC());
            } else if (mol > 0) {
                molecules = added(molecules, mol, solute);
            }
        }
        if (!saltCrystallises) {
            coldestC = IceActivity.COLDEST_C;
        }
        empty = molecules == null && salts == null && ideal == 0;
        boolean saltsAlone = salts != null && molecules == null && ideal == 0;
        eutecticC = saltsAlone ? coldestC : IceActivity.COLDEST_C;
        if (saltsAlone || empty) {
            particles = salts;
        } else if (salts == null && ideal == 0 && molecules != null) {
            particles = molecules;
        } else {
            particles = new Blend(molecules, salts, ideal, coldestC).particles();
        }
    }

    /** The line on which salt beyond its eutectic strength crystallises. */
    static IceLine of(Solution solution) {
        return new IceLine(solution, true);
    }

    /** The line on which all salt stays dissolved, however strong the brine becomes. */
    static IceLine allDissolved(Solution solution) {
        return new IceLine(solution, false);
    }

    /** Water that stays liquid beside ice, kg, below 0 °C. */
    double liquidKg(double temperatureC) {
        if (empty || temperatureC < eutecticC) {
            return 0;
        }
        return IceGrid.read(particles, Math.sqrt(-temperatureC))
                / (WaterBinding.WATER_MOL_PER_KG * IceGrid.minusLn(temperatureC));
    }

    /** Where the liquid water has fallen to an amount, °C; the coldest served if it never does. */
    double temperatureC(double kg) {
        if (empty) {
            return 0;
        }
        int warm = 0;
        int cold = IceGrid.LAST;
        if (liquidKg(IceGrid.temperatureC(cold)) > kg) {
            return IceActivity.COLDEST_C;
        }
        while (cold - warm > 1) {
            int middle = (warm + cold) >>> 1;
            if (liquidKg(IceGrid.temperatureC(middle)) > kg) {
                warm = middle;
            } else {
                cold = middle;
            }
        }
        double low = warm * IceGrid.STEP;
        double high = cold * IceGrid.STEP;
        for (int i = 0; i < 44; i++) {
            double middle = (low + high) / 2;
            if (liquidKg(-middle * middle) > kg) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.max(eutecticC, -high * high);
    }

    private static double[] added(double[] sum, double mol, Solute solute) {
        double[] each = solute.effectiveParticles();
        double[] all = sum == null ? new double[each.length] : sum;
        for (int i = 0; i < each.length; i++) {
            all[i] += mol * each[i];
        }
        return all;
    }
}
