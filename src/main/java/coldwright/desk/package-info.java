/**
 * The window: how it is opened, and the desk it shows. Models without controls stand in {@code
 * model}, thin views in {@code page}, {@code prose} and {@code code}; JavaFX stays in this package.
 */
package coldwright.desk;
