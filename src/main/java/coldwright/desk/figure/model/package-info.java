/** What is seen of a figure, without a window: its range, readout, table, pins and playback. */
package coldwright.desk.figure.model;
