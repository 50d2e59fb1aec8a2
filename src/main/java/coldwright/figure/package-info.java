/**
 * Figures as plain immutable data: series with units, axes, reference lines, alternative text and
 * sources, drawings to scale that change with time, and the wire format of both. Nothing here
 * draws.
 */
package coldwright.figure;
