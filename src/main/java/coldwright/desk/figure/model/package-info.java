/** Figures without a window: zoom, readout, table, pins and playback. */
package coldwright.desk.figure.model;
