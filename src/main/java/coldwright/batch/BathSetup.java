package coldwright.batch;

/**
 * Ice and salt as a batch file states them.
 *
 * @param iceG mass of ice, g
 * @param saltG mass of salt, g
 */
public record BathSetup(double iceG, double saltG) {}
