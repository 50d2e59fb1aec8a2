package coldwright.science.crystal;

import coldwright.science.Band;

/**
 * One point of a story's curve.
 *
 * @param hours time since the mix went into the cold, h
 * @param temperatureC temperature of the batch, °C
 * @param icePercent ice, % of the water
 * @param meanUm mean diameter of the crystals, µm; zero while there are none
 * @param stage name of the step, such as {@code freezing}
 */
public record CrystalMoment(
        double hours, double temperatureC, double icePercent, Band meanUm, String stage) {}
