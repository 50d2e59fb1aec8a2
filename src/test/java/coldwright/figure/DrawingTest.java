package coldwright.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

import java.util.List;

class DrawingTest {
    private static final Drawing EMPTY =
            Drawing.of(
                    "Two globules",
                    new Drawing.Field(20, 14, "µm"),
                    new Drawing.ScaleBar(5, "5 µm"));

    private static Drawing.Moment moment(double minutes, Piece... pieces) {
        return new Drawing.Moment(minutes, "min", "whisked", List.of(pieces));
    }

    private static Piece fat(double radius) {
        return new Piece.Disc(3, 4, radius, Tint.of(Tint.Role.FAT));
    }

    @Test
    void isToldByWhatIsThereFirstAndLast() {
        Drawing drawing = EMPTY.at(moment(0, fat(1), fat(1))).at(moment(4.5, fat(1.5)));
        assertEquals(
                "Two globules. A field of 20 by 14 µm."
                        + " First, 0 min: whisked; 2 pieces of fat, on average 2 µm across."
                        + " Last, 4.5 min: whisked; 1 piece of fat, on average 3 µm across.",
                FigureDescription.describe(drawing));
        assertEquals("in short", FigureDescription.describe(drawing.text("in short")));
    }

    @Test
    void saysWhatIsWrong() {
        assertEquals(
                "moment 2 is at 1.0 min, before the one before it; times must not fall",
                refusal(() -> EMPTY.at(moment(2)).at(moment(1))));
        assertEquals(
                "the scale bar is 50.0 µm long, longer than the field, 20.0 µm: choose a shorter one",
                refusal(() -> Drawing.of("", EMPTY.field(), new Drawing.ScaleBar(50, "50 µm"))));
        assertEquals("radius is 0.0; it must be more than zero", refusal(() -> fat(0)));
        assertEquals(
                "temperatureC is NaN; a piece that is coloured by its temperature needs one",
                refusal(() -> Tint.warmth(Double.NaN)));
    }

    private static String refusal(org.junit.jupiter.api.function.Executable wrong) {
        return assertThrows(IllegalArgumentException.class, wrong).getMessage();
    }
}
