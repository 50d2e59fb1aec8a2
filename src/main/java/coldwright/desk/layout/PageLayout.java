package coldwright.desk.layout;

/**
 * The widths of the window's columns, pixels: of the contents, 0 if they are hidden; of the text
 * with its margins; of the figures, 0 if they are under their snippets. They depend on the window's
 * width and the type size, so that large type on a wide screen is laid out like usual type on a
 * narrow one.
 */
public record PageLayout(double contentsPx, double readingPx, double figuresPx) {
    /** From this width on, in ems, figures are beside the text: 1100 pixels in usual type. */
    static final double FIGURES_BESIDE_EM = 61;

    /** From this width on, in ems, the contents are beside the text. */
    static final double CONTENTS_BESIDE_EM = 44;

    private static final double MARGINS_EM = 3.6;
    private static final double MEASURE_EM = 30.5;
    private static final double SHORT_MEASURE_EM = 27.5;

    /** The widths from the window's width and the type size, pixels; they sum to the window's. */
    public static PageLayout of(double widthPx, double emPx) {
        double ems = widthPx / emPx;
        double contents = ems < CONTENTS_BESIDE_EM ? 0 : clamp(ems * 0.165, 10.5, 15);
        if (ems < FIGURES_BESIDE_EM) {
            return new PageLayout(contents * emPx, (ems - contents) * emPx, 0);
        }
        double measure = clamp(SHORT_MEASURE_EM + (ems - FIGURES_BESIDE_EM) / 3, 0, MEASURE_EM);
        double reading = measure + MARGINS_EM;
        return new PageLayout(contents * emPx, reading * emPx, (ems - contents - reading) * emPx);
    }

    /** Whether figures are beside the text, not under their snippets. */
    public boolean figuresBeside() {
        return figuresPx > 0;
    }

    /** Whether the contents are beside the text, not behind a button. */
    public boolean contentsBeside() {
        return contentsPx > 0;
    }

    private static double clamp(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }
}
