/**
 * The window's start and its parts. Models without controls are in the {@code model} packages, thin
 * views in {@code page}, {@code prose} and {@code code}; JavaFX stays in this package.
 */
package coldwright.desk;
