package coldwright.paint;

import coldwright.figure.Drawing;
import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.figure.FigureDescription;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.FigureTheme;
import coldwright.paint.style.PixelImage;
import coldwright.text.WholeFile;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Writes figures as files: SVG and PNG images, CSV data.
 *
 * <p>Files always use the light theme. A file is replaced only when the new one is complete.
 */
public final class FigureFiles {
    private static final int LONGEST_NAME = 60;

    private FigureFiles() {}

    /**
     * Writes a figure, or one moment of a drawing, from 0, to a file ending in {@code .svg}, {@code
     * .png} or, for a figure, {@code .csv}, replaced if it exists.
     *
     * @throws IOException if it can't be written
     * @throws IllegalArgumentException if the ending is another
     */
    public static void write(Exhibit exhibit, int moment, Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        byte[] bytes;
        if (ending.equals("svg")) {
            bytes = svg(exhibit, moment, sheet(exhibit)).getBytes(StandardCharsets.UTF_8);
        } else if (ending.equals("png")) {
            bytes = png(exhibit, moment, sheet(exhibit));
        } else if (ending.equals("csv") && exhibit instanceof Figure figure) {
            bytes = csv(figure).getBytes(StandardCharsets.UTF_8);
        } else {
            throw new IllegalArgumentException(
                    exhibit instanceof Figure
                            ? name + " isn't a figure's file; it must end in .svg, .png or .csv"
                            : name + " isn't a drawing's file; it must end in .svg or .png");
        }
        Files.createDirectories(file.toAbsolutePath().getParent());
        WholeFile.write(file, bytes);
    }

    /** The default format in files. */
    public static FigureFormat sheet(Exhibit exhibit) {
        return FigureFormat.of(800, exhibit instanceof Figure ? 500 : 620);
    }

    /** The moments of a drawing that stand for all: first, middle and last. A figure has one. */
    public static List<Integer> moments(Exhibit exhibit) {
        int last = exhibit instanceof Drawing drawing ? drawing.moments().size() - 1 : 0;
        return IntStream.of(0, last / 2, last).filter(i -> i >= 0).distinct().boxed().toList();
    }

    /** A figure as {@link #svg(Exhibit, int, FigureFormat)}, or a drawing's first moment. */
    public static String svg(Exhibit exhibit, FigureFormat format) {
        return svg(exhibit, 0, format);
    }

    /**
     * A figure, or one moment of a drawing, from 0, as one {@code svg} element with selectable text
     * and a description.
     */
    public static String svg(Exhibit exhibit, int moment, FigureFormat format) {
        FigureFormat light = format.withTheme(FigureTheme.LIGHT);
        // depends on the content, so that several figures can be on one page
        String id = "figure-" + Integer.toHexString(exhibit.toString().hashCode());
        SvgPage page = new SvgPage(light, id);
        if (exhibit instanceof Figure figure) {
            ChartPainter.draw(figure, light, page.graphics());
        } else if (exhibit instanceof Drawing drawing) {
            DrawingPainter.draw(drawing, moment, light, page.graphics());
        } else {
            throw new AssertionError(exhibit.getClass());
        }
        return page.finish(exhibit.title(), FigureDescription.describe(exhibit));
    }

    /**
     * The figure's data as comma-separated lines: for each series a group of columns, with units in
     * the headers; a gap in a curve is an empty field.
     */
    public static String csv(Figure figure) {
        return FigureCsv.of(figure);
    }

    /** The bytes of a PNG file. */
    static byte[] png(Exhibit exhibit, int moment, FigureFormat format) {
        FigureFormat light = format.withTheme(FigureTheme.LIGHT);
        return png(
                exhibit instanceof Figure figure
                        ? ChartPainter.paint(figure, light).picture()
                        : DrawingPainter.paint((Drawing) exhibit, moment, light));
    }

    static byte[] png(PixelImage picture) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageIO.write(picture.image(), "png", out);
        } catch (IOException e) {
            throw new AssertionError("a write into memory failed", e);
        }
        return bytes.toByteArray();
    }

    /**
     * A file name made from the figure's title, valid in every file system: letters, digits and
     * hyphens, of limited length. The ending is such as {@code svg}.
     */
    public static String nameFor(Exhibit figure, String ending) {
        String plain =
                Normalizer.normalize(figure.title(), Normalizer.Form.NFKD)
                        .replaceAll("\\p{M}", "")
                        .toLowerCase(Locale.ROOT)
                        .replace("ß", "ss")
                        .replaceAll("[^a-z0-9]+", "-")
                        .replaceAll("^-|-$", "");
        if (plain.length() > LONGEST_NAME) {
            int word = plain.lastIndexOf('-', LONGEST_NAME);
            plain = plain.substring(0, word > LONGEST_NAME / 2 ? word : LONGEST_NAME);
        }
        boolean reserved = plain.matches("con|prn|aux|nul|com\\d|lpt\\d");
        String name = plain.isEmpty() || reserved ? "figure" : plain;
        return name + "." + ending;
    }
}
