/**
 * What the science sees, as drawings to scale: globules and crystals under a microscope, a bag cut
 * through. Nothing is reckoned here and nothing drawn: records of the science become pieces of a
 * {@link coldwright.figure.Drawing}.
 */
package coldwright.sight;
