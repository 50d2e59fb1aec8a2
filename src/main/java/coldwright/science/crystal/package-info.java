/**
 * Ice crystals: how many there are and how big, from the first seeds at the cold wall through
 * churning, hardening and storage to the spoon.
 *
 * <p>{@link coldwright.science.crystal.CrystalStory} tells it in a cook's words. Under it lies a
 * population balance ({@code Population}): the number of crystals of every size, moved by growth,
 * melting, breakage and seeding while the mass of ice follows the freezing curve.
 */
package coldwright.science.crystal;
