package coldwright.desk.figure.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Drawing;
import coldwright.figure.Figure;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Optional;

class PlaybackTest {
    private final Playback playback = new Playback();

    @Test
    void nothingMovesUnlessPressed() {
        playback.take(20);
        playback.pass(10);
        assertEquals(0, playback.moment().get());
    }

    @Test
    void eightMomentsPassInASecondAndItStopsAtTheEnd() {
        playback.take(20);
        playback.press();
        playback.pass(0.5);
        playback.pass(0.5);
        assertEquals(8, playback.moment().get());
        playback.pass(60);
        assertEquals(19, playback.moment().get());
        assertFalse(playback.playing().get());
        playback.press();
        assertEquals(0, playback.moment().get(), "from the first again");
        assertTrue(playback.playing().get());
    }

    @Test
    void goingToAMomentStopsTime() {
        playback.take(20);
        playback.press();
        playback.goTo(99);
        assertEquals(19, playback.moment().get());
        assertFalse(playback.playing().get());
        playback.take(5);
        assertEquals(4, playback.moment().get(), "a shorter drawing");
    }

    @Test
    void theTableOfADrawingListsItsMoments() {
        Drawing drawing =
                Drawing.of("d", new Drawing.Field(10, 10, "µm"), new Drawing.ScaleBar(5, "5 µm"))
                        .at(new Drawing.Moment(0, "min", "fresh", List.of()))
                        .at(new Drawing.Moment(30, "min", "clumped", List.of()));
        FigureTable table = FigureTable.of(drawing);
        assertEquals(
                List.of(List.of("0 min", "fresh"), List.of("30 min", "clumped")), table.rows());
    }

    @Test
    void linesOverTheSameXShareItsColumn() {
        Figure figure =
                Figure.of("")
                        .x("t", "s")
                        .y("T", "°C")
                        .line("a", new double[] {0, 1}, new double[] {5, -6})
                        .line("b", new double[] {0, 1}, new double[] {7, Double.NaN});
        FigureTable table = FigureTable.of(figure);
        assertEquals(List.of("t, s", "a: T, °C", "b: T, °C"), table.columns());
        assertEquals(List.of("1.0000", "−6.000", ""), table.rows().get(1));
    }

    @Test
    void eachKindOfSeriesHasATable() {
        Figure map =
                Figure.of("")
                        .x("w", "%")
                        .y("T", "°C")
                        .heatMap(
                                "ice, %",
                                new double[] {0, 10},
                                new double[] {-10, -5},
                                (w, temperatureC) -> w - temperatureC);
        assertEquals(List.of("w, %", "T, °C", "ice, %"), FigureTable.of(map).columns());
        assertEquals(4, FigureTable.of(map).rows().size());
        Figure bins = Figure.of("").x("d", "µm").histogram("n", new double[] {20, 29, 40}, 2);
        assertEquals(List.of("d, µm", "n: y"), FigureTable.of(bins).columns());
        Figure box = Figure.of("").y("t", "min").boxPlot("bag", new double[] {1, 2, 3});
        assertEquals(List.of("bag: t, min"), FigureTable.of(box).columns());
        assertEquals(3, FigureTable.of(box).rows().size());
    }

    @Test
    void aFigureIsPinnedOnceWithoutItsEarlierTrace() {
        PinnedFigures pinnedFigures = new PinnedFigures();
        Figure figure = Figure.of("f").line("a", 0, 1, x -> x);
        ShownFigure shownFigure = new ShownFigure(figure, Optional.of(figure));
        pinnedFigures.pin(shownFigure, this);
        pinnedFigures.pin(shownFigure, this);
        assertEquals(1, pinnedFigures.all().size());
        assertTrue(pinnedFigures.all().get(0).drawn().earlier().isEmpty());
        pinnedFigures.unpin(pinnedFigures.all().get(0));
        assertTrue(pinnedFigures.all().isEmpty());
    }
}
