package coldwright.paint.chart;

/** The screen's pixel grid, where thin lines are sharp: font size, pixels per logical pixel. */
record PixelGrid(double em, double scale) {
    /** The width of a thin line that fills whole pixels. */
    double axisWidth() {
        return Math.max(1, Math.round(em / 13 * scale)) / scale;
    }

    double hairline() {
        return 1 / scale;
    }

    /** The nearest position where a thin line fills whole pixels. */
    double snap(double place) {
        boolean odd = Math.round(axisWidth() * scale) % 2 == 1;
        double px = place * scale;
        return (odd ? Math.floor(px) + 0.5 : Math.rint(px)) / scale;
    }
}
