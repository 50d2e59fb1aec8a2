package coldwright.paint.style;

/**
 * The format of a figure.
 *
 * @param width logical pixels, 40 to 16 384
 * @param height logical pixels, 40 to 16 384
 * @param screenScale screen pixels per logical pixel, 0.5 to 4
 * @param typePx font size, logical pixels, 6 to 72
 */
public record FigureFormat(
        int width, int height, double screenScale, double typePx, FigureTheme theme) {
    private static final long MOST_PIXELS = 100_000_000;

    public FigureFormat {
        check("width", width, 40, 16_384, " pixels");
        check("height", height, 40, 16_384, " pixels");
        check("screenScale", screenScale, 0.5, 4.0, "");
        check("typePx", typePx, 6.0, 72.0, " pixels");
        if (width * screenScale * height * screenScale > MOST_PIXELS) {
            throw new IllegalArgumentException(
                    "%d × %d at scale %s are more than %d million pixels; draw it smaller"
                            .formatted(width, height, screenScale, MOST_PIXELS / 1_000_000));
        }
    }

    /** A format for a plain screen, in a font size that is easy to read. */
    public static FigureFormat of(int width, int height) {
        return new FigureFormat(width, height, 1, 13, FigureTheme.LIGHT);
    }

    public FigureFormat withScale(double newScreenScale) {
        return new FigureFormat(width, height, newScreenScale, typePx, theme);
    }

    public FigureFormat withType(double newTypePx) {
        return new FigureFormat(width, height, screenScale, newTypePx, theme);
    }

    public FigureFormat withTheme(FigureTheme newTheme) {
        return new FigureFormat(width, height, screenScale, typePx, newTheme);
    }

    /** The font size, reduced if the format is too small for it. */
    public double em() {
        return Math.max(5, Math.min(typePx, Math.min(height / 14.0, width / 20.0)));
    }

    public int widthPx() {
        return (int) Math.ceil(width * screenScale);
    }

    public int heightPx() {
        return (int) Math.ceil(height * screenScale);
    }

    private static <N extends Number> void check(
            String name, N value, N least, N most, String unit) {
        double number = value.doubleValue();
        if (!(number >= least.doubleValue() && number <= most.doubleValue())) {
            throw new IllegalArgumentException(
                    "%s is %s; it must be between %s and %s%s"
                            .formatted(name, value, least, most, unit));
        }
    }
}
