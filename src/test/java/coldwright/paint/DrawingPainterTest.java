package coldwright.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Drawing;
import coldwright.figure.Piece;
import coldwright.figure.Tint;
import coldwright.paint.drawing.DrawingLayout;
import coldwright.paint.drawing.DrawingPalette;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.PixelImage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

class DrawingPainterTest {
    private static final FigureFormat SHEET = FigureFormat.of(800, 560);
    private static final Drawing.Field FIELD = new Drawing.Field(100, 70, "µm");
    private static final Drawing EMPTY =
            Drawing.of("Globules", FIELD, new Drawing.ScaleBar(20, "20 µm"));
    private static final Piece FAT = new Piece.Disc(50, 35, 10, Tint.of(Tint.Role.FAT));

    @TempDir Path folder;

    private static Drawing.Moment moment(double minutes, Piece... pieces) {
        return new Drawing.Moment(minutes, "min", "whisked", List.of(pieces));
    }

    @Test
    void aDiscIsAsLargeAsTheScaleBarSays() {
        Drawing drawing = EMPTY.at(moment(0, FAT));
        DrawingLayout layout = DrawingLayout.of(drawing, 0, SHEET);
        PixelImage picture = DrawingPainter.paint(drawing, 0, SHEET);
        int serum =
                new DrawingPalette(drawing.warmth()).ground(Tint.Role.SERUM).getRGB() & 0xFFFFFF;
        int y = (int) (layout.field().getY() + 35 * layout.pxPerUnit());
        int across = 0;
        for (int x = (int) layout.field().getX() + 2;
                x < layout.field().getX() + 98 * layout.pxPerUnit();
                x++) {
            across += picture.rgbAt(x, y) == serum ? 0 : 1;
        }
        assertEquals(20 * layout.pxPerUnit(), across, 3, "edge and blending are a pixel each");
        int ink = 0;
        for (int x = 0; x < 400; x++) {
            boolean dark = (picture.rgbAt(x, (int) layout.barY()) & 0xFF) < 0x60;
            boolean bar = x <= layout.field().getX() + 20 * layout.pxPerUnit() + 1;
            ink += dark && bar ? 1 : 0;
        }
        assertEquals(20 * layout.pxPerUnit(), ink, 3);
    }

    @ParameterizedTest
    @CsvSource({"800, 560, 13", "400, 300, 13", "400, 300, 26", "800, 560, 26", "60, 50, 40"})
    void theFieldKeepsItsShapeAndStaysOnTheSheet(int width, int height, double type) {
        FigureFormat format = FigureFormat.of(width, height).withType(type);
        Drawing drawing = EMPTY.warmth(-20, 5).at(moment(0, FAT));
        Rectangle2D box = DrawingLayout.of(drawing, 0, format).field();
        assertEquals(0.7, box.getHeight() / box.getWidth(), 1e-9);
        assertTrue(box.getX() >= 0 && box.getX() + box.getWidth() <= width);
        assertTrue(box.getY() >= 0 && box.getY() + box.getHeight() <= height);
        DrawingPainter.paint(drawing, 0, format);
    }

    @Test
    void nothingMovesButThePiecesFromMomentToMoment() {
        Drawing drawing = EMPTY.at(moment(0)).at(moment(1234.5, FAT));
        DrawingLayout first = DrawingLayout.of(drawing, 0, SHEET);
        DrawingLayout last = DrawingLayout.of(drawing, 1, SHEET);
        assertEquals(first.field(), last.field());
        assertEquals(first.barY(), last.barY());
    }

    @Test
    void whatIsWarmerIsLighterAllTheWay() {
        DrawingPalette palette = new DrawingPalette(EMPTY.warmth(-22, 5).warmth());
        double darker = -1;
        for (double t = -22; t <= -4; t += 0.5) {
            double light = palette.at(t).getRed() + palette.at(t).getGreen();
            assertTrue(light > darker, "at " + t);
            darker = light;
        }
    }

    @Test
    void bandsLeaveNoGroundBetweenThem() {
        Drawing drawing = EMPTY.on(Tint.Role.WALL).warmth(-20, 5);
        drawing = drawing.at(new Drawing.Moment(0, "min", "", bands()));
        PixelImage picture = DrawingPainter.paint(drawing, 0, SHEET);
        int wall = new DrawingPalette(drawing.warmth()).ground(Tint.Role.WALL).getRGB() & 0xFFFFFF;
        Rectangle2D box = DrawingLayout.of(drawing, 0, SHEET).field();
        for (int y = (int) box.getY() + 2; y < box.getY() + box.getHeight() - 2; y++) {
            assertFalse(picture.rgbAt(300, y) == wall, "row " + y);
        }
    }

    private static List<Piece> bands() {
        return java.util.stream.IntStream.range(0, 70)
                .mapToObj(
                        i ->
                                (Piece)
                                        new Piece.Band(
                                                i,
                                                i + 1,
                                                Tint.warmth(-i / 4.0),
                                                Tint.warmth(-i / 4.0)))
                .toList();
    }

    @Test
    void writesSvgAndPngAndNothingElse() throws IOException {
        Drawing drawing = EMPTY.at(moment(0)).at(moment(10, FAT));
        Path svg = folder.resolve("a.svg");
        FigureFiles.write(drawing, 1, svg);
        String text = Files.readString(svg);
        assertTrue(text.contains(">10 min · whisked</text>") && text.contains(">20 µm</text>"));
        assertTrue(text.contains("A field of 100 by 70 µm."));
        FigureFiles.write(drawing, 0, folder.resolve("a.png"));
        assertEquals((byte) 0x89, Files.readAllBytes(folder.resolve("a.png"))[0]);
        assertEquals(
                "a.csv isn't a drawing's file; it must end in .svg or .png",
                refusal(() -> FigureFiles.write(drawing, 0, folder.resolve("a.csv"))));
        assertEquals(
                "moment is 2; the drawing \"Globules\" has moments 0 to 1",
                refusal(() -> DrawingPainter.paint(drawing, 2, SHEET)));
    }

    private static String refusal(org.junit.jupiter.api.function.Executable wrong) {
        return assertThrows(IllegalArgumentException.class, wrong).getMessage();
    }
}
