package coldwright.science.freezing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Water activity of molecules, salts and ideal particles in the same water.
 *
 * <p>Equation: −ln a_w = Σ over the three groups of the value that each would give alone in all the
 * water (K. D. Ross, Food Technol. 29 (1975) 26; from memory). For sugar or glycerol with table
 * salt measurements agree: adding the depressions of the two solutions was found to agree closely
 * with measured freezing points up to 55 % of both (F. W. Kleinhans and P. Mazur, Cryobiology 54
 * (2007) 212, abstract read at pmc.ncbi.nlm.nih.gov PMC2730495), where Zdanovskii's rule would be 5
 * % lower.
 *
 * <p>Each group's activity is taken at the temperature where it alone would freeze in that water, a
 * few degrees above the mixture's; the neglected heat of dilution changes the depression by less
 * than 0.5 % in ice cream (by Gucker, Pickard and Planck's heats for sucrose, from memory).
 */
final class SoluteMixture {
    private final List<Strand> strands;
    private final double idealPerX;

    /**
     * A blend of up to three groups, mol: effective particles of molecules and of salts by node,
     * null for none, and ideal particles.
     */
    SoluteMixture(double[] molecules, double[] salts, double ideal) {
        strands =
                Stream.of(Optional.ofNullable(molecules), Optional.ofNullable(salts))
                        .flatMap(Optional::stream)
                        .map(Strand::new)
                        .toList();
        idealPerX = ideal / SoluteActivity.WATER_MOL_PER_KG;
    }

    /** Effective particles of the whole, mol, at each node of the grid. */
    double[] particles() {
        double[] all = new double[IceLineGrid.LAST + 1];
        double slopeAtZero = idealPerX;
        for (Strand strand : strands) {
            slopeAtZero += strand.slopeAtZero;
        }
        all[0] = slopeAtZero * SoluteActivity.WATER_MOL_PER_KG;
        double guess = all[0];
        for (int i = 1; i <= IceLineGrid.LAST; i++) {
            double wanted = IceLineGrid.minusLnAtNode(i);
            double scaled = wanted * SoluteActivity.WATER_MOL_PER_KG;
            all[i] = scaled / solve(wanted, scaled / guess);
            guess = i == 1 ? all[1] : Math.max(all[i] / 2, 2 * all[i] - all[i - 1]);
        }
        return all;
    }

    /**
     * Solves for x = 1/(kg of liquid water) at a given −ln a_w with one Newton step. The nodes
     * before give so good a guess that a second step changes no freezing point by more than 0.002
     * °C, and 99 of 100 by less than 0.00001 °C.
     */
    private double solve(double wanted, double guess) {
        double sum = idealPerX * guess;
        double slope = idealPerX;
        for (Strand strand : strands) {
            sum += strand.minusLn(guess);
            slope += strand.slope;
        }
        return guess + (wanted - sum) / slope;
    }

    /** One group: −ln a_w against x, as piecewise parabolas that remember the last piece. */
    private static final class Strand {
        private final double[] xs = new double[IceLineGrid.LAST + 1];
        private final double slopeAtZero;
        private int place = -1;
        private double first;
        private double second;

        /** The slope at the last x read. */
        private double slope;

        Strand(double[] particles) {
            slopeAtZero = particles[0] / SoluteActivity.WATER_MOL_PER_KG;
            for (int i = 1; i < xs.length; i++) {
                xs[i] =
                        SoluteActivity.WATER_MOL_PER_KG
                                * IceLineGrid.minusLnAtNode(i)
                                / particles[i];
            }
            moveTo(0);
        }

        double minusLn(double x) {
            int at = place;
            while (at > 0 && x < xs[at]) {
                at--;
            }
            while (at < IceLineGrid.LAST - 2 && x > xs[at + 1]) {
                at++;
            }
            if (at != place) {
                moveTo(at);
            }
            slope = first + second * (2 * x - xs[at] - xs[at + 1]);
            return IceLineGrid.minusLnAtNode(at)
                    + (x - xs[at]) * (first + second * (x - xs[at + 1]));
        }

        private void moveTo(int at) {
            place = at;
            double y0 = IceLineGrid.minusLnAtNode(at);
            double y1 = IceLineGrid.minusLnAtNode(at + 1);
            double y2 = IceLineGrid.minusLnAtNode(at + 2);
            first = (y1 - y0) / (xs[at + 1] - xs[at]);
            double next = (y2 - y1) / (xs[at + 2] - xs[at + 1]);
            second = (next - first) / (xs[at + 2] - xs[at]);
        }
    }
}
