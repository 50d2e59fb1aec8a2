package coldwright.science.thermal;

import coldwright.science.Require;

/**
 * A solid or a liquid with constant properties.
 *
 * @param conductivityWPerMK conductivity, W/(m·K), more than zero
 * @param heatCapacityJPerGK heat capacity, J/(g·K), more than zero
 */
public record Phase(double conductivityWPerMK, double heatCapacityJPerGK) {
    public Phase {
        Require.positive("conductivityWPerMK", conductivityWPerMK, "W/(m·K)");
        Require.positive("heatCapacityJPerGK", heatCapacityJPerGK, "J/(g·K)");
    }
}
