package coldwright.desk.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;

import org.junit.jupiter.api.Test;

class ArrangementTest {
    private static final double EM = Looks.USUAL_EM_PX;

    @Test
    void figuresStandBesideTheTextFrom1100Pixels() {
        assertTrue(Arrangement.of(1100, EM).figuresBeside());
        assertFalse(Arrangement.of(1090, EM).figuresBeside());
        assertTrue(Arrangement.of(1024, EM).contentsBeside());
    }

    @Test
    void largeTypeOnAWideScreenIsSetLikeUsualTypeOnANarrowOne() {
        Arrangement large = Arrangement.of(1280, 2 * EM);
        assertFalse(large.contentsBeside());
        assertFalse(large.figuresBeside());
        assertTrue(Arrangement.of(3840, 2 * EM).figuresBeside());
    }

    @Test
    void aFigureBesideTheTextIsWideEnoughToRead() {
        assertTrue(Arrangement.of(1100, EM).figuresPx() > 330);
        assertTrue(Arrangement.of(1280, EM).figuresPx() > 430);
    }

    @Cases(200)
    void theWidthsSumToTheWindows(Draw draw) {
        double widthPx = draw.doubleIn(320, 8000);
        double emPx = draw.doubleIn(18, 36);
        Arrangement now = Arrangement.of(widthPx, emPx);
        assertEquals(widthPx, now.contentsPx() + now.readingPx() + now.figuresPx(), 1e-6 * widthPx);
        assertTrue(now.readingPx() > 0 && now.figuresPx() >= 0 && now.contentsPx() >= 0);
    }
}
