/** Figures on the page: shown, read off, zoomed, pinned, saved, played, and sketched. */
package coldwright.desk.figure;
