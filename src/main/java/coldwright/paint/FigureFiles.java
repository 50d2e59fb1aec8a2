package coldwright.paint;

import coldwright.figure.Drawing;
import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
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
import java.util.Locale;

import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Writes figures as files: SVG and PNG images, CSV data.
 *
 * <p>Files always use the light theme. A file is replaced only when the new one is complete.
 */
public final class FigureFiles {
    /** The default format of figures in files. */
    public static final FigureFormat SHEET = FigureFormat.of(800, 500);

    private static final int LONGEST_NAME = 60;

    private FigureFiles() {}

    /**
     * Writes a figure in the default format to a file ending in {@code .svg}, {@code .png} or
     * {@code .csv}, replaced if it exists.
     *
     * @throws IOException if it can't be written
     * @throws IllegalArgumentException if the ending is another
     */
    public static void write(Figure figure, Path file) throws IOException {
        write(figure, file, SHEET);
    }

    /**
     * As {@link #write(Figure, Path)}, in a given format, which is ignored for a CSV file.
     *
     * @throws IOException if it can't be written
     * @throws IllegalArgumentException if the ending is another
     */
    public static void write(Figure figure, Path file, FigureFormat format) throws IOException {
        String name = String.valueOf(file.getFileName());
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        byte[] bytes =
                switch (ending) {
                    case "svg" -> FigureSvg.of(figure, format).getBytes(StandardCharsets.UTF_8);
                    case "png" -> png(figure, format);
                    case "csv" -> FigureCsv.of(figure).getBytes(StandardCharsets.UTF_8);
                    default ->
                            throw new IllegalArgumentException(
                                    "%s is no figure's file; it must end in .svg, .png or .csv"
                                            .formatted(name));
                };
        writeWhole(bytes, file);
    }

    /**
     * Writes one moment of a drawing, from 0, to a file ending in {@code .svg} or {@code .png},
     * replaced if it exists.
     *
     * @throws IOException if it can't be written
     * @throws IllegalArgumentException if the ending is another
     */
    public static void write(Drawing drawing, int moment, Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        FigureFormat format = DrawingPainter.SHEET;
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        if (ending.equals("svg")) {
            String svg = FigureSvg.of(drawing, moment, format);
            writeWhole(svg.getBytes(StandardCharsets.UTF_8), file);
        } else if (ending.equals("png")) {
            writeWhole(png(DrawingPainter.paint(drawing, moment, format)), file);
        } else {
            throw new IllegalArgumentException(
                    "%s is no drawing's file; it must end in .svg or .png".formatted(name));
        }
    }

    /** One moment of a drawing, from 0, as {@link #svg(Figure, FigureFormat)}. */
    public static String svg(Drawing drawing, int moment, FigureFormat format) {
        return FigureSvg.of(drawing, moment, format);
    }

    /** The figure as one {@code svg} element with selectable text and a description. */
    public static String svg(Figure figure, FigureFormat format) {
        return FigureSvg.of(figure, format);
    }

    /**
     * The figure's data as comma-separated lines: for each series a group of columns, with units in
     * the headers; a gap in a curve is an empty field.
     */
    public static String csv(Figure figure) {
        return FigureCsv.of(figure);
    }

    /** The bytes of the figure as a PNG file. */
    public static byte[] png(Figure figure, FigureFormat format) {
        return png(ChartPainter.paint(figure, format.withTheme(FigureTheme.LIGHT)).picture());
    }

    private static byte[] png(PixelImage picture) {
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

    private static void writeWhole(byte[] bytes, Path file) throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
        WholeFile.write(file, bytes);
    }
}
