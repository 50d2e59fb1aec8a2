package coldwright.desk.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;

import org.junit.jupiter.api.Test;

class PageLayoutTest {
    private static final double EM = PageStyles.USUAL_EM_PX;

    @Test
    void figuresStandBesideTheTextFrom1100Pixels() {
        assertTrue(PageLayout.of(1100, EM).figuresBeside());
        assertFalse(PageLayout.of(1090, EM).figuresBeside());
        assertTrue(PageLayout.of(1024, EM).contentsBeside());
    }

    @Test
    void largeTypeOnAWideScreenIsSetLikeUsualTypeOnANarrowOne() {
        PageLayout large = PageLayout.of(1280, 2 * EM);
        assertFalse(large.contentsBeside());
        assertFalse(large.figuresBeside());
        assertTrue(PageLayout.of(3840, 2 * EM).figuresBeside());
    }

    @Test
    void aFigureBesideTheTextIsWideEnoughToRead() {
        assertTrue(PageLayout.of(1100, EM).figuresPx() > 330);
        assertTrue(PageLayout.of(1280, EM).figuresPx() > 430);
    }

    @Cases(200)
    void theWidthsSumToTheWindows(Draw draw) {
        double widthPx = draw.doubleIn(320, 8000);
        double emPx = draw.doubleIn(18, 36);
        PageLayout now = PageLayout.of(widthPx, emPx);
        assertEquals(widthPx, now.contentsPx() + now.readingPx() + now.figuresPx(), 1e-6 * widthPx);
        assertTrue(now.readingPx() > 0 && now.figuresPx() >= 0 && now.contentsPx() >= 0);
    }
}
