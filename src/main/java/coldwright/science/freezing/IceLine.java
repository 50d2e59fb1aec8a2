package coldwright.science.freezing;

import java.util.Map;

/**
 * The water that the solutes of a solution keep liquid beside ice at each temperature.
 *
 * <p>Sugars, sugar alcohols, acids and alcohol together: Zdanovskii's rule (R. H. Stokes and R. A.
 * Robinson, J. Phys. Chem. 70 (1966) 2126; from memory). Solutions that are each in equilibrium
 * with ice at the same temperature stay so when poured together, so at temperature t every solute
 * keeps the water liquid that it would keep alone:
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
 * <p>Molecules, salts and ideal particles with each other: see {@link SoluteMixture}.
 *
 * <p>Salt beyond its eutectic strength crystallises; with nothing else in the water no brine is
 * left below the eutectic.
 *
 * <p>Expected error: 2 % of the depression for sugars and milk salts, 5 % with alcohol or much
 * salt.
 */
final class IceLine {
    /** Effective particles of everything dissolved, mol, at each node of the grid; or null. */
    private final double[] particles;

    /** Brine with crystals of salt; null if no salt is beyond its eutectic strength. */
    private final Crust crust;

    private IceLine(double[] particles, Crust crust) {
        this.particles = particles;
        this.crust = crust;
    }

    /** The line on which salt beyond its eutectic strength crystallises. */
    static IceLine of(Solution solution) {
        Groups groups = Groups.of(solution);
        if (groups.salts() == null) {
            return new IceLine(groups.particles(), null);
        }
        return new IceLine(groups.particles(), new Crust(groups));
    }

    /** The line on which all salt stays dissolved, however strong the brine becomes. */
    static IceLine allDissolved(Solution solution) {
        return new IceLine(Groups.of(solution).particles(), null);
    }

    /** Water that stays liquid beside ice, kg, below 0 °C. */
    double liquidKg(double temperatureC) {
        if (particles == null) {
            return 0;
        }
        double kg =
                IceLineGrid.read(particles, Math.sqrt(-temperatureC))
                        / (SoluteActivity.WATER_MOL_PER_KG * IceLineGrid.minusLn(temperatureC));
        if (crust == null || kg >= crust.saturatedKg) {
            return kg;
        }
        return Math.min(kg, crust.liquidKg(temperatureC));
    }

    /** Where the liquid water has fallen to an amount, °C; the coldest covered if it never does. */
    double temperatureC(double kg) {
        if (particles == null) {
            return 0;
        }
        int warm = 0;
        int cold = IceLineGrid.LAST;
        if (liquidKg(IceLineGrid.temperatureC(cold)) > kg) {
            return IceActivity.COLDEST_C;
        }
        while (cold - warm > 1) {
            int middle = (warm + cold) >>> 1;
            if (liquidKg(IceLineGrid.temperatureC(middle)) > kg) {
                warm = middle;
            } else {
                cold = middle;
            }
        }
        double found = between(warm * IceLineGrid.STEP, cold * IceLineGrid.STEP, kg);
        double temperatureC = -found * found;
        return crust == null ? temperatureC : crust.atLeastEutectic(temperatureC);
    }

    /** The u = √(−t) in a cell of the grid where the liquid has fallen to an amount. */
    private double between(double warm, double cold, double kg) {
        double low = warm;
        double high = cold;
        double lowSurplus = low == 0 ? Double.MAX_VALUE : liquidKg(-low * low) - kg;
        double highSurplus = liquidKg(-high * high) - kg;
        for (int i = 0; i < 60 && high - low > 1e-13; i++) {
            double straight = high - highSurplus * (high - low) / (highSurplus - lowSurplus);
            boolean halve = i % 3 == 2 || !(straight > low && straight < high);
            double middle = halve ? (low + high) / 2 : straight;
            double surplus = liquidKg(-middle * middle) - kg;
            if (surplus == 0) {
                return middle;
            }
            if (surplus > 0) {
                low = middle;
                lowSurplus = surplus;
            } else {
                high = middle;
                highSurplus = surplus;
            }
            if (Math.abs(surplus) < 1e-13 * kg) {
                return middle;
            }
        }
        return high;
    }

    /**
     * Brine with crystals of salt in it: its salt takes as much from the activity of water as at
     * the eutectic, and the other solutes take the rest.
     */
    private static final class Crust {
        private final Groups groups;

        /** Least water in which the salts stay within their eutectic strength, kg. */
        private final double saturatedKg;

        private IceLine others;

        Crust(Groups groups) {
            this.groups = groups;
            saturatedKg = new IceLine(groups.salts(), null).liquidKg(groups.eutecticC());
        }

        double liquidKg(double temperatureC) {
            double left =
                    IceLineGrid.minusLn(temperatureC) - IceLineGrid.minusLn(groups.eutecticC());
            if (left <= 0) {
                return Double.POSITIVE_INFINITY;
            }
            if (others == null) {
                others = new IceLine(groups.withoutSalts().particles(), null);
            }
            return others.liquidKg(IceLineGrid.temperatureOfMinusLnC(left));
        }

        double atLeastEutectic(double temperatureC) {
            return Math.abs(temperatureC - groups.eutecticC()) < 1e-9
                    ? groups.eutecticC()
                    : temperatureC;
        }
    }

    /** Effective particles by node, mol, of molecules and of salts (null if none); ideal ones. */
    private record Groups(double[] molecules, double[] salts, double ideal, double eutecticC) {
        static Groups of(Solution solution) {
            double[] molecules = null;
            double[] salts = null;
            double eutecticC = 0;
            for (Map.Entry<Solute, Double> part : solution.massG().entrySet()) {
                Solute solute = part.getKey();
                double mol = part.getValue() / solute.molarMassGPerMol();
                if (mol > 0 && solute.isSalt()) {
                    salts = added(salts, mol, solute);
                    eutecticC = Math.min(eutecticC, solute.eutectic().temperatureC());
                } else if (mol > 0) {
                    molecules = added(molecules, mol, solute);
                }
            }
            return new Groups(molecules, salts, solution.idealMol(), eutecticC);
        }

        Groups withoutSalts() {
            return new Groups(molecules, null, ideal, 0);
        }

        /** Of everything together; null for pure water. */
        double[] particles() {
            if (ideal == 0 && molecules == null) {
                return salts;
            }
            if (ideal == 0 && salts == null) {
                return molecules;
            }
            return new SoluteMixture(molecules, salts, ideal).particles();
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
}
