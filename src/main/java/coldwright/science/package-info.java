/**
 * The core calculator: the effect of fat, sugar, salt, alcohol, milk solids and motion on ice.
 *
 * <p>Pure Java with cited models, no window and no input or output beyond its own data files. This
 * package contains only the classes that its subpackages share: argument checks, temperatures and
 * bands.
 */
package coldwright.science;
