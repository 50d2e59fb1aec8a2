/**
 * Ice crystals: how many there are and how big, from the first seeds at the cold wall through
 * churning, hardening and storage to the spoon.
 *
 * <p>{@link coldwright.science.crystal.CrystalStory} is the entry point. It uses a population
 * balance ({@code CrystalPopulation}): the number of crystals of every size, moved by growth,
 * melting, breakage and seeding while the mass of ice follows the freezing curve.
 */
package coldwright.science.crystal;
