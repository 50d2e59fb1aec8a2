package coldwright.paint.style;

/** The format of a figure: width and height in logical pixels, resolution, font size and theme. */
public record FigureFormat(int width, int height, FigureQuality look) {
    /** Minimum width or height, logical pixels. */
    private static final int LEAST = 40;

    private static final int MOST = 16_384;
    private static final long MOST_PIXELS = 100_000_000;

    public FigureFormat {
        check("width", width);
        check("height", height);
        double pixels = width * look.screenScale() * height * look.screenScale();
        if (pixels > MOST_PIXELS) {
            throw new IllegalArgumentException(
                    "%d × %d at scale %s are more than %d million pixels; draw it smaller"
                            .formatted(width, height, look.screenScale(), MOST_PIXELS / 1_000_000));
        }
    }

    /** Screen pixels per logical pixel, 0.5 to 4; font size, logical pixels, 6 to 72; theme. */
    public record FigureQuality(double screenScale, double typePx, FigureTheme theme) {
        /** One screen pixel per logical pixel, and a font size that is easy to read. */
        public static final FigureQuality PLAIN = new FigureQuality(1, 13, FigureTheme.LIGHT);

        public FigureQuality {
            if (!(screenScale >= 0.5 && screenScale <= 4)) {
                throw new IllegalArgumentException(
                        "screenScale is %s; it must be between 0.5 and 4".formatted(screenScale));
            }
            if (!(typePx >= 6 && typePx <= 72)) {
                throw new IllegalArgumentException(
                        "typePx is %s; it must be between 6 and 72 pixels".formatted(typePx));
            }
        }
    }

    /** A format of this size in plain quality; both are 40 to 16 384 logical pixels. */
    public static FigureFormat of(int width, int height) {
        return new FigureFormat(width, height, FigureQuality.PLAIN);
    }

    /** The same format at another screen scale, screen pixels per logical pixel. */
    public FigureFormat withScale(double screenScale) {
        return new FigureFormat(
                width, height, new FigureQuality(screenScale, look.typePx(), look.theme()));
    }

    /** The same format with another font size, logical pixels. */
    public FigureFormat withType(double typePx) {
        return new FigureFormat(
                width, height, new FigureQuality(look.screenScale(), typePx, look.theme()));
    }

    public FigureFormat withTheme(FigureTheme figureTheme) {
        return new FigureFormat(
                width, height, new FigureQuality(look.screenScale(), look.typePx(), figureTheme));
    }

    /** The font size, reduced if the format is too small for it. */
    public double em() {
        return Math.max(5, Math.min(look.typePx(), Math.min(height / 14.0, width / 20.0)));
    }

    public int widthPx() {
        return (int) Math.ceil(width * look.screenScale());
    }

    public int heightPx() {
        return (int) Math.ceil(height * look.screenScale());
    }

    private static void check(String name, int value) {
        if (value < LEAST || value > MOST) {
            throw new IllegalArgumentException(
                    "%s is %d; it must be between %d and %d pixels"
                            .formatted(name, value, LEAST, MOST));
        }
    }
}
