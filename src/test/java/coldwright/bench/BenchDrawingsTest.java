package coldwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Drawing;
import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.figure.Piece;
import coldwright.figure.Tint;

import org.junit.jupiter.api.Test;

import java.util.Collections;
import java.util.List;

class BenchDrawingsTest {
    private static final String DRAWING =
            """
            Drawing drawing(int count) {
                Piece disc = new Piece.Disc(3, 4, 1, Tint.of(Tint.Role.FAT));
                return Drawing.of("Globules", new Drawing.Field(20, 14, "µm"), new Drawing.ScaleBar(5, "5 µm"))
                        .at(new Drawing.Moment(0, "min", "", Collections.nCopies(count, disc)));
            }
            """;

    private static final Drawing TWO =
            Drawing.of("Globules", new Drawing.Field(20, 14, "µm"), new Drawing.ScaleBar(5, "5 µm"))
                    .at(
                            new Drawing.Moment(
                                    0,
                                    "min",
                                    "",
                                    Collections.nCopies(
                                            2, new Piece.Disc(3, 4, 1, Tint.of(Tint.Role.FAT)))));

    private static FinishedRun run(String snippet) {
        return Benches.run(Benches.shared(), List.of(DRAWING), snippet);
    }

    @Test
    void figuresAndDrawingsComeBackInOrder() {
        FinishedRun run =
                run(
                        """
                        Page.show(drawing(2));
                        Page.show(Figure.of("curve").line("l", 0, 1, t -> t));
                        drawing(2)
                        """);
        assertInstanceOf(RunOutcome.Finished.class, run.outcome(), () -> run.toString());
        Figure curve = Figure.of("curve").line("l", 0, 1, t -> t);
        assertEquals(List.<Exhibit>of(TWO, curve), run.exhibits(), "the value was shown before");
        assertEquals(List.of(curve), run.figures());
        assertTrue(run.outcome().toString().contains("the drawing “Globules”"));
    }

    @Test
    void aDrawingTooLargeIsRefusedInTheSnippet() {
        FinishedRun run = run("Page.show(drawing(200_000));");
        assertTrue(
                run.outcome()
                        .toString()
                        .contains(
                                "the figure \"Globules\" has 200000 points; the page takes up to"),
                () -> run.toString());
        assertEquals(List.of(), run.exhibits());
    }
}
