package coldwright.desk.layout;

/**
 * How the window's width is shared out. All follows from the width and the size of the type, so
 * that large type on a wide screen is set like usual type on a narrow one.
 *
 * @param contentsPx width of the list of lessons and steps; 0 if it is put away
 * @param readingPx width of the reading column with its margins
 * @param figuresPx width of the figures' column; 0 if figures stand under their snippets
 */
public record PageLayout(double contentsPx, double readingPx, double figuresPx) {
    /** From this width on, in ems, figures stand beside the text: 1100 pixels in usual type. */
    static final double FIGURES_BESIDE_EM = 61;

    /** From this width on, in ems, the contents stand beside the text. */
    static final double CONTENTS_BESIDE_EM = 44;

    private static final double MARGINS_EM = 3.6;
    private static final double MEASURE_EM = 30.5;
    private static final double SHORT_MEASURE_EM = 27.5;

    /**
     * Shares it out.
     *
     * @param widthPx the window's width, pixels
     * @param emPx the size of the type, pixels
     * @return the arrangement; its widths sum to the window's
     */
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

    /**
     * Whether figures stand beside the text.
     *
     * @return false if they stand under their snippets
     */
    public boolean figuresBeside() {
        return figuresPx > 0;
    }

    /**
     * Whether the contents stand beside the text.
     *
     * @return false if they are put away behind a word
     */
    public boolean contentsBeside() {
        return contentsPx > 0;
    }

    private static double clamp(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }
}
