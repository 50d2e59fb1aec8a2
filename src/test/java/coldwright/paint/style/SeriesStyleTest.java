package coldwright.paint.style;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.paint.Pixels;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.awt.Color;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

class SeriesStyleTest {
    private static final int COLORS = 6;

    /** What the Web Content Accessibility Guidelines ask of graphics (success criterion 1.4.11). */
    private static final double LEAST_CONTRAST = 3;

    /** And of text (1.4.3). */
    private static final double LEAST_CONTRAST_OF_TEXT = 4.5;

    /**
     * The least distance in CIE 1976 L*a*b* between two inks: some seven times the just noticeable
     * difference of 2.3 (both figures from memory); dashes and shapes carry the rest.
     */
    private static final double LEAST_DISTANCE = 16;

    /**
     * How a protanope and a deuteranope see linear red, green and blue: Viénot, Brettel and Mollon
     * 1999, as reduced to one matrix each (from memory).
     */
    private static final double[][][] SIGHTS = {
        {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}},
        {{0.11238, 0.88762, 0}, {0.11238, 0.88762, 0}, {0.00401, -0.00401, 1}},
        {{0.29275, 0.70725, 0}, {0.29275, 0.70725, 0}, {-0.02234, 0.02234, 1}},
    };

    static List<FigureTheme> themes() {
        return List.of(FigureTheme.LIGHT, FigureTheme.DARK, FigureTheme.CONTRAST);
    }

    @ParameterizedTest
    @MethodSource("themes")
    void eachColourStandsOutFromItsGround(FigureTheme figureTheme) {
        for (int i = 0; i < COLORS; i++) {
            double contrast = contrast(SeriesStyle.of(i, 0, figureTheme).color(), figureTheme);
            assertTrue(contrast >= LEAST_CONTRAST, i + " has a contrast of " + contrast);
        }
        for (Color text :
                List.of(figureTheme.text(), figureTheme.quietText(), figureTheme.mark())) {
            assertTrue(contrast(text, figureTheme) >= LEAST_CONTRAST_OF_TEXT);
        }
    }

    @ParameterizedTest
    @MethodSource("themes")
    void coloursStayApartForAllKindsOfSight(FigureTheme figureTheme) {
        for (double[][] sight : SIGHTS) {
            for (int i = 0; i < COLORS; i++) {
                for (int k = i + 1; k < COLORS; k++) {
                    double apart =
                            distance(
                                    lab(SeriesStyle.of(i, 0, figureTheme).color(), sight),
                                    lab(SeriesStyle.of(k, 0, figureTheme).color(), sight));
                    assertTrue(apart >= LEAST_DISTANCE, i + " and " + k + ": " + apart);
                }
            }
        }
    }

    @Test
    void eachInkDiffersFromAllOthersByDashesOrShapeAlone() {
        Set<String> dashes = new HashSet<>();
        Set<PointShape> shapes = new HashSet<>();
        Set<String> all = new HashSet<>();
        for (int i = 0; i < COLORS * COLORS; i++) {
            SeriesStyle seriesStyle = SeriesStyle.of(i, i, FigureTheme.LIGHT);
            if (i < COLORS) {
                dashes.add(seriesStyle.dash().toString());
                shapes.add(seriesStyle.shape());
            }
            all.add(seriesStyle.color().toString() + seriesStyle.dash());
        }
        assertEquals(COLORS, dashes.size());
        assertEquals(COLORS, shapes.size());
        assertEquals(COLORS * COLORS, all.size());
    }

    @ParameterizedTest
    @MethodSource("themes")
    void anEarlierInkIsPalerButSeen(FigureTheme figureTheme) {
        for (int i = 0; i < COLORS; i++) {
            double now = contrast(SeriesStyle.of(i, i, figureTheme).color(), figureTheme);
            double then =
                    contrast(SeriesStyle.of(i, i, figureTheme).earlier().color(), figureTheme);
            assertTrue(then < now * 0.65 && then > 1.2, now + " then " + then);
        }
    }

    private static double contrast(Color color, FigureTheme figureTheme) {
        double one = Pixels.luminance(color.getRGB() & 0xFFFFFF) + 0.05;
        double other = Pixels.luminance(figureTheme.paper().getRGB() & 0xFFFFFF) + 0.05;
        return Math.max(one, other) / Math.min(one, other);
    }

    private static double distance(List<Double> a, List<Double> b) {
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            sum += (a.get(i) - b.get(i)) * (a.get(i) - b.get(i));
        }
        return Math.sqrt(sum);
    }

    private static List<Double> lab(Color color, double[][] sight) {
        double[] rgb = {
            Pixels.linear(color.getRed()),
            Pixels.linear(color.getGreen()),
            Pixels.linear(color.getBlue())
        };
        double[] seen = times(sight, rgb);
        for (int i = 0; i < 3; i++) {
            seen[i] = Math.max(0, Math.min(1, seen[i]));
        }
        double[][] toXyz = {
            {0.4124, 0.3576, 0.1805}, {0.2126, 0.7152, 0.0722}, {0.0193, 0.1192, 0.9505}
        };
        double[] xyz = times(toXyz, seen);
        double x = root(xyz[0] / 0.9505);
        double y = root(xyz[1]);
        double z = root(xyz[2] / 1.089);
        return new ArrayList<>(List.of(116 * y - 16, 500 * (x - y), 200 * (y - z)));
    }

    private static double root(double share) {
        return share > 0.008856 ? Math.cbrt(share) : 7.787 * share + 16 / 116.0;
    }

    private static double[] times(double[][] matrix, double[] vector) {
        double[] result = new double[3];
        for (int i = 0; i < 3; i++) {
            for (int k = 0; k < 3; k++) {
                result[i] += matrix[i][k] * vector[k];
            }
        }
        return result;
    }
}
