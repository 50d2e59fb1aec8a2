package coldwright.terminal.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Drawing;
import coldwright.figure.Figure;
import coldwright.figure.Piece;
import coldwright.figure.Tint;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

class FigureFolderTest {
    @TempDir Path folder;

    private List<String> written(FigureFolder figures, coldwright.figure.Exhibit exhibit)
            throws IOException {
        List<String> names = new ArrayList<>();
        for (Path file : figures.write(exhibit)) {
            assertTrue(Files.size(file) > 100);
            names.add(folder.relativize(file).toString());
        }
        return names;
    }

    @Test
    void writesTheFirstMiddleAndLastMomentOfADrawing() throws IOException {
        Drawing drawing =
                Drawing.of(
                        "Fat, 4 °C",
                        new Drawing.Field(20, 14, "µm"),
                        new Drawing.ScaleBar(5, "5 µm"));
        for (int i = 0; i < 5; i++) {
            Piece disc = new Piece.Disc(3 + i, 4, 1, Tint.of(Tint.Role.FAT));
            drawing = drawing.at(new Drawing.Moment(2.5 * i, "min", "", List.of(disc)));
        }
        FigureFolder figures = FigureFolder.at(folder);
        assertEquals(
                List.of(
                        "01-fat-4-c-1-at-0-min.svg",
                        "01-fat-4-c-3-at-5-min.svg",
                        "01-fat-4-c-5-at-10-min.svg",
                        "01-fat-4-c-1-at-0-min.png",
                        "01-fat-4-c-3-at-5-min.png",
                        "01-fat-4-c-5-at-10-min.png"),
                written(figures, drawing));
        Drawing still =
                new Drawing(
                        "Still",
                        drawing.field(),
                        drawing.bar(),
                        drawing.ground(),
                        drawing.warmth(),
                        drawing.moments().subList(0, 1),
                        "",
                        List.of());
        assertEquals(List.of("02-still.svg", "02-still.png"), written(figures, still));
        assertEquals(
                List.of("03-curve.svg", "03-curve.png"),
                written(figures, Figure.of("Curve").line("l", 0, 1, x -> x)));
    }
}
