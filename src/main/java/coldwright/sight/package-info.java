/**
 * Drawings to scale from the science: globules and crystals under a microscope, a bag in
 * cross-section. Nothing is calculated or rendered here: science records become parts of a {@link
 * coldwright.figure.Drawing}.
 */
package coldwright.sight;
