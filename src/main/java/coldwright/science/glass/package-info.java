/**
 * Sugar and water from thin syrup to glass: the viscosity of the liquid, where it turns to glass,
 * and why a wafer can be rolled while hot, snaps when cold and goes soft in damp air.
 */
package coldwright.science.glass;
