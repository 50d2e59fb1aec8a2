/**
 * Thermal properties of a batch: conductivity, density and heat capacity, enthalpy by temperature
 * while water turns to ice, and the heat to remove.
 */
package coldwright.science.thermal;
