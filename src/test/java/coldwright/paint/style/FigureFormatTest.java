package coldwright.paint.style;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class FigureFormatTest {
    @Test
    void whatCanNotBeDrawnOnIsRefused() {
        assertEquals(
                "width is 0; it must be between 40 and 16384 pixels",
                refusal(() -> FigureFormat.of(0, 99)));
        assertEquals(
                "height is 20000; it must be between 40 and 16384 pixels",
                refusal(() -> FigureFormat.of(99, 20_000)));
        assertEquals(
                "screenScale is NaN; it must be between 0.5 and 4.0",
                refusal(() -> FigureFormat.of(99, 99).withScale(Double.NaN)));
        assertEquals(
                "typePx is 200.0; it must be between 6.0 and 72.0 pixels",
                refusal(() -> FigureFormat.of(99, 99).withType(200)));
        assertEquals(
                "16000 × 16000 at scale 1.0 are more than 100 million pixels; draw it smaller",
                refusal(() -> FigureFormat.of(16_000, 16_000)));
    }

    private static String refusal(Runnable making) {
        return assertThrows(IllegalArgumentException.class, making::run).getMessage();
    }
}
