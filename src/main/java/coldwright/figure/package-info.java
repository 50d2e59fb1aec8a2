/**
 * Figures as plain immutable data: series with units, axes, marks, alternative text and sources,
 * drawings to scale that change with time, and the wire form in which both leave the bench. Nothing
 * here draws.
 */
package coldwright.figure;
