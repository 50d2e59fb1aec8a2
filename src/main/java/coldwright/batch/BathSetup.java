package coldwright.batch;

/**
 * Ice and salt in a recipe file.
 *
 * @param iceG mass of ice, g
 * @param saltG mass of salt, g
 */
public record BathSetup(double iceG, double saltG) {}
