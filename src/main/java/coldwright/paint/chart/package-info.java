/**
 * The parts of a chart: its layout, frame, axes and legend, and the layers that draw curves,
 * points, bars, bands and reference lines.
 */
package coldwright.paint.chart;
