package coldwright.paint;

import coldwright.figure.Drawing;
import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.PixelImage;
import coldwright.paint.style.PlotArea;
import coldwright.text.WholeFile;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * A picture that moves: the moments of a drawing, or the figures of a dial that is turned from end
 * to end. It becomes an animated GIF or, for a video, numbered PNG frames.
 *
 * @param pictures what is shown, one after the other, each as long as the others
 * @param seconds how long the whole film is, s, 0.1 to 600
 * @param format size, type size and ground
 */
public record MovingPicture(List<Picture> pictures, double seconds, FigureFormat format) {
    /** PNG frames of one second. */
    public static final int FRAMES_PER_SECOND = 25;

    private static final String GIF_FRAME = "javax_imageio_gif_image_1.0";

    /** A figure, or one moment of a drawing, from 0. */
    public record Picture(Exhibit exhibit, int moment) {}

    /** Validates the length. */
    public MovingPicture {
        pictures = List.copyOf(pictures);
        if (pictures.isEmpty() || !(seconds >= 0.1 && seconds <= 600)) {
            throw new IllegalArgumentException(
                    "the film has %d pictures in %s s; it needs one or more and 0.1 to 600 s"
                            .formatted(pictures.size(), seconds));
        }
    }

    /** A drawing from its first moment to its last, with title and time or without. */
    public static MovingPicture of(
            Drawing drawing, boolean captioned, double seconds, FigureFormat format) {
        Drawing shown = captioned ? drawing : withoutWords(drawing);
        List<Picture> pictures =
                IntStream.range(0, drawing.moments().size())
                        .mapToObj(moment -> new Picture(shown, moment))
                        .toList();
        return new MovingPicture(pictures, seconds, format);
    }

    private static Drawing withoutWords(Drawing drawing) {
        List<Drawing.Moment> moments =
                drawing.moments().stream()
                        .map(one -> new Drawing.Moment(one.time(), "", "", one.pieces()))
                        .toList();
        return new Drawing(
                "",
                drawing.field(),
                drawing.bar(),
                drawing.ground(),
                drawing.warmth(),
                moments,
                drawing.writtenText(),
                drawing.sources());
    }

    /** The number of frames in a folder of PNG files. */
    public int frames() {
        return (int) Math.max(pictures.size(), Math.round(seconds * FRAMES_PER_SECOND));
    }

    /**
     * Writes an animated GIF that runs again and again; returns whether it was written.
     *
     * @param goOn hears of each picture done, from 1; false stops, and nothing is written
     * @throws IOException if it can't be written; then nothing is
     */
    public boolean gif(Path file, IntPredicate goOn) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageWriter writer = ImageIO.getImageWritersByFormatName("gif").next();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.prepareWriteSequence(null);
            Optional<PlotArea> axes = Optional.empty();
            for (int i = 0; i < pictures.size(); i++) {
                RenderedPicture picture = painted(i, axes);
                axes = picture.axes();
                IIOMetadata about = about(writer, picture.image(), i);
                writer.writeToSequence(new IIOImage(picture.image(), null, about), null);
                if (!goOn.test(i + 1)) {
                    return false;
                }
            }
            writer.endWriteSequence();
        } finally {
            writer.dispose();
        }
        WholeFile.write(file, bytes.toByteArray());
        return true;
    }

    /** How long a picture stays, and that the film begins again. */
    private IIOMetadata about(ImageWriter writer, BufferedImage image, int index)
            throws IOException {
        IIOMetadata about =
                writer.getDefaultImageMetadata(
                        ImageTypeSpecifier.createFromRenderedImage(image), null);
        IIOMetadataNode root = (IIOMetadataNode) about.getAsTree(GIF_FRAME);
        IIOMetadataNode control =
                (IIOMetadataNode) root.getElementsByTagName("GraphicControlExtension").item(0);
        long until = Math.round(100 * seconds * (index + 1) / pictures.size());
        long from = Math.round(100 * seconds * index / pictures.size());
        control.setAttribute("delayTime", Long.toString(Math.max(2, until - from)));
        control.setAttribute("disposalMethod", "restoreToBackgroundColor");
        IIOMetadataNode again = new IIOMetadataNode("ApplicationExtension");
        again.setAttribute("applicationID", "NETSCAPE");
        again.setAttribute("authenticationCode", "2.0");
        again.setUserObject(new byte[] {1, 0, 0});
        IIOMetadataNode extensions = new IIOMetadataNode("ApplicationExtensions");
        extensions.appendChild(again);
        root.appendChild(extensions);
        about.setFromTree(GIF_FRAME, root);
        return about;
    }

    /**
     * Writes frames {@code 0001.png}, {@code 0002.png} and so on into a new folder, {@link
     * #FRAMES_PER_SECOND} a second; returns whether they were written.
     *
     * @param goOn hears of each frame done, from 1; false stops, and nothing stays
     * @throws IOException if the folder exists or can't be written; then nothing stays
     */
    public boolean frames(Path folder, IntPredicate goOn) throws IOException {
        Path part = folder.resolveSibling(folder.getFileName() + WholeFile.PART);
        if (Files.exists(folder)) {
            throw new IOException(folder + " exists already; choose another name");
        }
        Files.createDirectories(part);
        try {
            byte[] png = {};
            int last = -1;
            Optional<PlotArea> axes = Optional.empty();
            for (int i = 0; i < frames(); i++) {
                int at = (int) ((long) i * pictures.size() / frames());
                if (at != last) {
                    RenderedPicture picture = painted(at, axes);
                    axes = picture.axes();
                    png = FigureFiles.png(new PixelImage(picture.image()));
                    last = at;
                }
                WholeFile.write(part.resolve(String.format(Locale.ROOT, "%04d.png", i + 1)), png);
                if (!goOn.test(i + 1)) {
                    return false;
                }
            }
            Files.move(part, folder);
            return true;
        } finally {
            delete(part);
        }
    }

    private static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            List<Path> all;
            try (Stream<Path> files = Files.list(folder)) {
                all = new ArrayList<>(files.toList());
            }
            all.add(folder);
            for (Path one : all) {
                Files.delete(one);
            }
        }
    }

    private record RenderedPicture(BufferedImage image, Optional<PlotArea> axes) {}

    /** Paints a picture, a figure on the axes of the one before while its data fit. */
    private RenderedPicture painted(int index, Optional<PlotArea> axes) {
        Picture picture = pictures.get(index);
        if (picture.exhibit() instanceof Figure figure) {
            RenderedFigure drawn = ChartPainter.paint(figure, Optional.empty(), format, axes);
            return new RenderedPicture(drawn.picture().image(), Optional.of(drawn.plot()));
        }
        Drawing drawing = (Drawing) picture.exhibit();
        PixelImage image = DrawingPainter.paint(drawing, picture.moment(), format);
        return new RenderedPicture(image.image(), Optional.empty());
    }
}
