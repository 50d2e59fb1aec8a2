/**
 * Figures as plain immutable data: series with units, axes, marks, alternative text and sources,
 * and the wire form in which they leave the bench. Nothing here draws.
 */
package coldwright.figure;
