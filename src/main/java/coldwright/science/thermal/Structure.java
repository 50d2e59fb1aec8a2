package coldwright.science.thermal;

import coldwright.science.Require;

/**
 * Conductivity of two phases by their arrangement.
 *
 * <p>{@code k} is conductivity in W/(m·K), the share is of the volume. Layers along the heat flow
 * ({@link #PARALLEL}) and across it ({@link #SERIES}) bound every other arrangement.
 *
 * <p>Sources: J. C. Maxwell 1873 and A. Eucken 1940 (drops, crystals or bubbles in a continuous
 * phase); F. L. Levy, Int. J. Refrig. 4 (1981) 223–225 (neither phase continuous); both as given in
 * ASHRAE Handbook, Refrigeration, "Thermal properties of foods", from memory, and checked by the
 * laws that they must obey: Levy's is symmetric in the two phases, and both are between the bounds.
 * B. A. Fricke and B. R. Becker, HVAC&amp;R Research 7 (2001) 311–330 (abstract read) found Levy's
 * the closest of those tried to measured conductivities of frozen food. Expect about 10 % for a mix
 * with ice and 20 % with much air.
 */
public enum Structure {
    /** Layers along the heat flow: the upper bound. */
    PARALLEL {
        @Override
        double mixed(double host, double guest, double share) {
            return host * (1 - share) + guest * share;
        }
    },
    /** Layers across the heat flow: the lower bound. */
    SERIES {
        @Override
        double mixed(double host, double guest, double share) {
            return 1 / ((1 - share) / host + share / guest);
        }
    },
    /** Maxwell and Eucken: separate grains or bubbles of the guest in the host. */
    DISPERSED {
        @Override
        double mixed(double host, double guest, double share) {
            return host
                    * (2 * host + guest - 2 * share * (host - guest))
                    / (2 * host + guest + share * (host - guest));
        }
    },
    /** Levy: as dispersed, but symmetric in host and guest. */
    INTERLOCKED {
        @Override
        double mixed(double host, double guest, double share) {
            double ratio = guest / host;
            double difference = (ratio - 1) * (ratio - 1);
            if (difference < 1e-12) {
                return host;
            }
            double sigma = difference / ((ratio + 1) * (ratio + 1) + ratio / 2);
            double b = 2 / sigma - 1 + 2 * share;
            double f = 0.5 * (b - Math.sqrt(b * b - 8 * share / sigma));
            return host * (2 + ratio + 2 * (ratio - 1) * f) / (2 + ratio - (ratio - 1) * f);
        }
    };

    private static final Require.Range SHARE = new Require.Range(0, 1, "of the volume");

    abstract double mixed(double host, double guest, double share);

    /**
     * {@return conductivity of the whole, W/(m·K), between the two}
     *
     * @param hostWPerMK conductivity of the host phase, W/(m·K), more than zero
     * @param guest the phase in the host
     */
    public double conductivityWPerMK(double hostWPerMK, Part guest) {
        return mixed(
                Require.positive("hostWPerMK", hostWPerMK, "W/(m·K)"),
                guest.conductivityWPerMK(),
                guest.volumeShare());
    }

    /**
     * A phase in a host.
     *
     * @param volumeShare its share of the whole volume, 0 to 1
     * @param conductivityWPerMK its conductivity, W/(m·K), more than zero
     */
    public record Part(double volumeShare, double conductivityWPerMK) {
        public Part {
            Require.within("volumeShare", volumeShare, SHARE);
            Require.positive("conductivityWPerMK", conductivityWPerMK, "W/(m·K)");
        }
    }
}
