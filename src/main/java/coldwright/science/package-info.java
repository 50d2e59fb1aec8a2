/**
 * The core calculator: what fat, sugar, salt, alcohol, milk solids and motion do to ice.
 *
 * <p>Pure Java with cited models, no window and no input or output beyond its own data files. This
 * package holds only what all rooms below it share: the checks at the door and the zero of the
 * Celsius scale.
 */
package coldwright.science;
