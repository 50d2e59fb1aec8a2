/**
 * Figures on the page: shown, read off, zoomed, pinned, saved, played, and sketched before the run.
 */
package coldwright.desk.figure;
