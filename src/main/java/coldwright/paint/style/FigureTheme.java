package coldwright.paint.style;

import java.awt.Color;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The colours of a figure. Files always use the light theme.
 *
 * <p>The colours of series are our choice and order from two published sets for all kinds of colour
 * vision: blue, vermilion and reddish purple from M. Okabe and K. Ito, "Color Universal Design
 * (CUD): How to make figures and presentations that are friendly to Colorblind people", 2002,
 * modified 2008 (jfly.uni-koeln.de/color); green, wine and indigo from the set "muted" of P. Tol,
 * "Colour Schemes", SRON Technical Note SRON/EPS/TN/09-002, 2012 (values as packages of colour
 * schemes quote them; the note itself was not opened). On a dark page they are sky blue of the
 * former and lighter colours of Tol's sets "bright", "light" and "muted"; for high contrast darker
 * ones of our own. Only colours with a contrast of at least 3 to 1 against their ground were taken,
 * 4 to 1 on a dark page and 5 to 1 for high contrast.
 *
 * @param series the colours of data, six in each theme
 */
public record FigureTheme(
        Color paper,
        Color text,
        Color quietText,
        Color axis,
        Color zero,
        Color grid,
        Color mark,
        List<Color> series) {
    /** White paper, as in files; blue, vermilion, green, wine, reddish purple, indigo. */
    public static final FigureTheme LIGHT =
            of(
                    new int[] {
                        0xFFFFFF, 0x26292B, 0x53585C, 0x6F7579, 0xB4B9BB, 0xE5E8E8, 0x53585C
                    },
                    new int[] {0x0072B2, 0xD55E00, 0x117733, 0x882255, 0xCC79A7, 0x332288});

    /** A dark page; sky blue, red, pear, pink, sand, olive. */
    public static final FigureTheme DARK =
            of(
                    new int[] {
                        0x202B32, 0xDFE7EA, 0xA3B1B8, 0x8C9AA2, 0x5C6C75, 0x33424B, 0xB7C3C9
                    },
                    new int[] {0x56B4E9, 0xEE6677, 0xBBCC33, 0xFFAABB, 0xEEDD88, 0x999933});

    /** White paper and black ink; blue, brown, ochre, black, night blue, grey. */
    public static final FigureTheme CONTRAST =
            of(
                    new int[] {
                        0xFFFFFF, 0x000000, 0x000000, 0x000000, 0x6F7579, 0xC4C9CB, 0x000000
                    },
                    new int[] {0x0072B2, 0x5B2C00, 0x8A6B00, 0x000000, 0x222255, 0x555555});

    private static FigureTheme of(int[] own, int[] series) {
        Color[] c = IntStream.of(own).mapToObj(Color::new).toArray(Color[]::new);
        List<Color> data = IntStream.of(series).mapToObj(Color::new).toList();
        return new FigureTheme(c[0], c[1], c[2], c[3], c[4], c[5], c[6], data);
    }

    /**
     * Colours from little to much: from near the paper through the first of the data to the text.
     */
    public List<Color> scale() {
        Color data = series.get(0);
        return List.of(
                mixed(paper, data, 0.1), mixed(paper, data, 0.55), data, mixed(data, text, 0.65));
    }

    /** The same on no paper at all. */
    public FigureTheme transparent() {
        Color clear = new Color(paper.getRed(), paper.getGreen(), paper.getBlue(), 0);
        return new FigureTheme(clear, text, quietText, axis, zero, grid, mark, series);
    }

    /** The background of a label over data: nearly opaque paper. */
    public Color halo() {
        return new Color(paper.getRed(), paper.getGreen(), paper.getBlue(), 215);
    }

    /** The colour at a share of the way from one to the other. */
    public static Color mixed(Color one, Color other, double share) {
        return new Color(
                mixed(one.getRed(), other.getRed(), share),
                mixed(one.getGreen(), other.getGreen(), share),
                mixed(one.getBlue(), other.getBlue(), share));
    }

    private static int mixed(int one, int other, double share) {
        return (int) Math.round(one + (other - one) * share);
    }
}
