package coldwright.paint.style;

/**
 * What a figure is drawn on: how large, how fine, and in how large a type.
 *
 * @param width logical pixels
 * @param height logical pixels
 * @param look how fine and in which type
 */
public record FigureFormat(int width, int height, FigureQuality look) {
    /** The least and the greatest width or height in logical pixels. */
    private static final int LEAST = 40;

    private static final int MOST = 16_384;
    private static final long MOST_PIXELS = 100_000_000;

    /** Checks what is given. */
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

    /**
     * How fine a figure is drawn, and in which type.
     *
     * @param screenScale pixels of the screen to a logical pixel, 0.5 to 4
     * @param typePx size of the plain type in logical pixels, 6 to 72
     * @param ground what it is drawn on
     */
    public record FigureQuality(double screenScale, double typePx, FigureTheme ground) {
        /** One pixel to a pixel, in a type that reads well on a screen. */
        public static final FigureQuality PLAIN = new FigureQuality(1, 13, FigureTheme.LIGHT);

        /** Checks what is given. */
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

    /**
     * A sheet in plain look.
     *
     * @param width logical pixels, 40 to 16 384
     * @param height logical pixels, 40 to 16 384
     * @return the sheet
     */
    public static FigureFormat of(int width, int height) {
        return new FigureFormat(width, height, FigureQuality.PLAIN);
    }

    /**
     * The same sheet for a finer screen.
     *
     * @param screenScale pixels of the screen to a logical pixel
     * @return the sheet
     */
    public FigureFormat withScale(double screenScale) {
        return new FigureFormat(
                width, height, new FigureQuality(screenScale, look.typePx(), look.ground()));
    }

    /**
     * The same sheet in a larger or smaller type.
     *
     * @param typePx size of the plain type in logical pixels
     * @return the sheet
     */
    public FigureFormat withType(double typePx) {
        return new FigureFormat(
                width, height, new FigureQuality(look.screenScale(), typePx, look.ground()));
    }

    /**
     * The same sheet on another ground.
     *
     * @param figureTheme what it is drawn on
     * @return the sheet
     */
    public FigureFormat withGround(FigureTheme figureTheme) {
        return new FigureFormat(
                width, height, new FigureQuality(look.screenScale(), look.typePx(), figureTheme));
    }

    /** The type's size, less on a sheet too small for it. */
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
