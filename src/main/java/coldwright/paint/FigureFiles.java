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
 * Figures as files: SVG and PNG to look at, CSV to reckon with.
 *
 * <p>Files are always light, whatever page the figure stands on. A file is either written whole or
 * not at all: what stood there before stays until the new one is complete.
 */
public final class FigureFiles {
    /** What a figure is drawn on in a file, unless another sheet is asked for. */
    public static final FigureFormat SHEET = FigureFormat.of(800, 500);

    private static final int LONGEST_NAME = 60;

    private FigureFiles() {}

    /**
     * Writes a figure in the format that the file's ending names.
     *
     * @param figure the figure
     * @param file a file ending in {@code .svg}, {@code .png} or {@code .csv}; one that is there is
     *     replaced
     * @throws IOException if it can't be written
     * @throws IllegalArgumentException if the ending is another
     */
    public static void write(Figure figure, Path file) throws IOException {
        write(figure, file, SHEET);
    }

    /**
     * Writes a figure on a sheet of a certain size.
     *
     * @param figure the figure
     * @param file a file ending in {@code .svg}, {@code .png} or {@code .csv}; one that is there is
     *     replaced
     * @param sheet how large; for a CSV file of no account
     * @throws IOException if it can't be written
     * @throws IllegalArgumentException if the ending is another
     */
    public static void write(Figure figure, Path file, FigureFormat sheet) throws IOException {
        String name = String.valueOf(file.getFileName());
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        byte[] bytes =
                switch (ending) {
                    case "svg" -> FigureSvg.of(figure, sheet).getBytes(StandardCharsets.UTF_8);
                    case "png" -> png(figure, sheet);
                    case "csv" -> FigureCsv.of(figure).getBytes(StandardCharsets.UTF_8);
                    default ->
                            throw new IllegalArgumentException(
                                    "%s is no figure's file; it must end in .svg, .png or .csv"
                                            .formatted(name));
                };
        writeWhole(bytes, file);
    }

    /**
     * Writes one moment of a drawing in the format that the file's ending names.
     *
     * @param drawing the drawing
     * @param moment which moment, from 0
     * @param file a file ending in {@code .svg} or {@code .png}; one that is there is replaced
     * @throws IOException if it can't be written
     * @throws IllegalArgumentException if the ending is another
     */
    public static void write(Drawing drawing, int moment, Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        FigureFormat sheet = DrawingPainter.SHEET;
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        if (ending.equals("svg")) {
            String svg = FigureSvg.of(drawing, moment, sheet);
            writeWhole(svg.getBytes(StandardCharsets.UTF_8), file);
        } else if (ending.equals("png")) {
            writeWhole(png(DrawingPainter.paint(drawing, moment, sheet)), file);
        } else {
            throw new IllegalArgumentException(
                    "%s is no drawing's file; it must end in .svg or .png".formatted(name));
        }
    }

    /**
     * One moment of a drawing as an SVG document, as {@link #svg(Figure, FigureFormat)}.
     *
     * @param drawing the drawing
     * @param moment which moment, from 0
     * @param sheet how large, in logical pixels
     * @return one {@code svg} element
     */
    public static String svg(Drawing drawing, int moment, FigureFormat sheet) {
        return FigureSvg.of(drawing, moment, sheet);
    }

    /**
     * The figure as an SVG document, its letters as text, its description within.
     *
     * @param figure the figure
     * @param sheet how large, in logical pixels
     * @return one {@code svg} element, fit to stand in a file or within HTML
     */
    public static String svg(Figure figure, FigureFormat sheet) {
        return FigureSvg.of(figure, sheet);
    }

    /**
     * The figure's data as a table: for each series a group of columns, with units in the headers.
     *
     * @param figure the figure
     * @return lines of values with commas between; a gap in a curve is an empty field
     */
    public static String csv(Figure figure) {
        return FigureCsv.of(figure);
    }

    /**
     * The figure as a PNG file.
     *
     * @param figure the figure
     * @param sheet how large and how fine
     * @return the file's bytes
     */
    public static byte[] png(Figure figure, FigureFormat sheet) {
        return png(ChartPainter.paint(figure, sheet.withGround(FigureTheme.LIGHT)).picture());
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
     * A name for the figure's file, made from its title.
     *
     * @param figure the figure or drawing
     * @param ending such as {@code svg}
     * @return a name that every file system takes: letters, digits and hyphens, not too long
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
