package coldwright.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Drawing;
import coldwright.figure.Figure;
import coldwright.figure.Piece;
import coldwright.figure.Tint;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.FigureTheme;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

class MovingPictureTest {
    private static final FigureFormat SMALL = FigureFormat.of(320, 180).withType(9);

    private static final Drawing GROWS =
            Drawing.of(
                            "A globule",
                            new Drawing.Field(20, 10, "µm"),
                            new Drawing.ScaleBar(5, "5 µm"))
                    .at(IntStream.range(0, 5).mapToObj(MovingPictureTest::moment).toList());

    private static Drawing.Moment moment(int i) {
        Piece disc = new Piece.Disc(10, 5, 1 + i, Tint.of(Tint.Role.FAT));
        return new Drawing.Moment(i, "min", "larger", List.of(disc));
    }

    @TempDir private Path folder;

    @Test
    void aGifHasEveryMomentForItsTimeAndBeginsAgain() throws IOException {
        Path file = folder.resolve("grows.gif");
        List<Integer> heard = new ArrayList<>();
        assertTrue(MovingPicture.of(GROWS, true, 2, SMALL).gif(file, heard::add));
        assertEquals(List.of(1, 2, 3, 4, 5), heard);
        try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
            ImageReader reader = ImageIO.getImageReadersByFormatName("gif").next();
            reader.setInput(in);
            assertEquals(5, reader.getNumImages(true));
            int hundredths = 0;
            for (int i = 0; i < 5; i++) {
                Element about =
                        (Element)
                                reader.getImageMetadata(i).getAsTree("javax_imageio_gif_image_1.0");
                Element control =
                        (Element) about.getElementsByTagName("GraphicControlExtension").item(0);
                hundredths += Integer.parseInt(control.getAttribute("delayTime"));
                assertEquals(1, about.getElementsByTagName("ApplicationExtension").getLength());
            }
            assertEquals(200, hundredths);
            BufferedImage first = reader.read(0);
            assertEquals(320, first.getWidth());
            assertNotEquals(List.of(ink(first)), List.of(ink(reader.read(4))));
        }
    }

    @Test
    void framesAreNumberedAndOfFullSize() throws IOException {
        Path frames = folder.resolve("frames");
        FigureFormat large = new FigureFormat(1920, 1080, 1, 40, FigureTheme.DARK);
        assertTrue(MovingPicture.of(GROWS, true, 0.4, large).frames(frames, done -> true));
        try (Stream<Path> files = Files.list(frames)) {
            assertEquals(
                    IntStream.rangeClosed(1, 10).mapToObj("%04d.png"::formatted).toList(),
                    files.map(one -> one.getFileName().toString()).sorted().toList());
        }
        BufferedImage last = ImageIO.read(frames.resolve("0010.png").toFile());
        assertEquals(1920, last.getWidth());
        assertEquals(1080, last.getHeight());
        assertEquals(0xFF202B32, last.getRGB(2, 2));
        assertThrows(
                IOException.class,
                () -> MovingPicture.of(GROWS, true, 0.4, SMALL).frames(frames, done -> true),
                "an existing folder is kept");
    }

    @Test
    void theGroundMayBeTransparentAndTheWordsLeftOut() throws IOException {
        FigureFormat clear = SMALL.withTheme(FigureTheme.LIGHT.transparent());
        assertTrue(
                MovingPicture.of(GROWS, false, 0.1, clear)
                        .frames(folder.resolve("clear"), done -> true));
        BufferedImage bare = ImageIO.read(folder.resolve("clear/0001.png").toFile());
        assertEquals(0, bare.getRGB(2, 2) >>> 24);
        assertTrue(
                MovingPicture.of(GROWS, true, 0.1, clear)
                        .frames(folder.resolve("told"), done -> true));
        BufferedImage told = ImageIO.read(folder.resolve("told/0001.png").toFile());
        assertNotEquals(ink(bare), ink(told));
    }

    @Test
    void aDialsSweepKeepsItsAxes() throws IOException {
        List<MovingPicture.Picture> sweep =
                Stream.of(10, 9, 8, 7)
                        .map(i -> Figure.of("f").line("l", 0, 10, x -> x * i))
                        .map(figure -> new MovingPicture.Picture(figure, 0))
                        .toList();
        assertTrue(
                new MovingPicture(sweep, 0.16, SMALL)
                        .frames(folder.resolve("sweep"), done -> true));
        BufferedImage first = ImageIO.read(folder.resolve("sweep/0001.png").toFile());
        BufferedImage last = ImageIO.read(folder.resolve("sweep/0004.png").toFile());
        for (int x = 0; x < 22; x++) {
            for (int y = 0; y < 180; y++) {
                assertEquals(first.getRGB(x, y), last.getRGB(x, y), "the y axis has moved");
            }
        }
    }

    @Test
    void whatIsStoppedOrFailsLeavesNothing() throws IOException {
        MovingPicture film = MovingPicture.of(GROWS, true, 1, SMALL);
        assertFalse(film.gif(folder.resolve("a.gif"), done -> done < 3));
        assertFalse(film.frames(folder.resolve("a"), done -> done < 3));
        assertThrows(IOException.class, () -> film.gif(folder.resolve("none/a.gif"), done -> true));
        assertThrows(
                IllegalStateException.class,
                () ->
                        film.frames(
                                folder.resolve("b"),
                                done -> {
                                    throw new IllegalStateException("the window is gone");
                                }));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(List.of(), files.toList());
        }
    }

    /** Pixels that are not like the upper left corner. */
    private static int ink(BufferedImage image) {
        int ink = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                ink += image.getRGB(x, y) == image.getRGB(0, 0) ? 0 : 1;
            }
        }
        return ink;
    }
}
