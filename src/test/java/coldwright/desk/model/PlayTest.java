package coldwright.desk.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Drawing;
import coldwright.figure.Figure;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Optional;

class PlayTest {
    private final Play play = new Play();

    @Test
    void nothingMovesUnlessPressed() {
        play.take(20);
        play.pass(10);
        assertEquals(0, play.moment().get());
    }

    @Test
    void eightMomentsPassInASecondAndItStopsAtTheEnd() {
        play.take(20);
        play.press();
        play.pass(0.5);
        play.pass(0.5);
        assertEquals(8, play.moment().get());
        play.pass(60);
        assertEquals(19, play.moment().get());
        assertFalse(play.playing().get());
        play.press();
        assertEquals(0, play.moment().get(), "from the first again");
        assertTrue(play.playing().get());
    }

    @Test
    void goingToAMomentStopsTime() {
        play.take(20);
        play.press();
        play.goTo(99);
        assertEquals(19, play.moment().get());
        assertFalse(play.playing().get());
        play.take(5);
        assertEquals(4, play.moment().get(), "a shorter drawing");
    }

    @Test
    void theTableOfADrawingListsItsMoments() {
        Drawing drawing =
                Drawing.of("d", new Drawing.Field(10, 10, "µm"), new Drawing.Bar(5, "5 µm"))
                        .at(new Drawing.Moment(0, "min", "fresh", List.of()))
                        .at(new Drawing.Moment(30, "min", "clumped", List.of()));
        DataTable table = DataTable.of(drawing);
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
        DataTable table = DataTable.of(figure);
        assertEquals(List.of("t, s", "a: T, °C", "b: T, °C"), table.columns());
        assertEquals(List.of("1.0000", "−6.000", ""), table.rows().get(1));
    }

    @Test
    void aFigureIsPinnedOnceWithoutItsEarlierTrace() {
        Pins pins = new Pins();
        Figure figure = Figure.of("f").line("a", 0, 1, x -> x);
        Drawn drawn = new Drawn(figure, Optional.of(figure));
        pins.pin(drawn, this);
        pins.pin(drawn, this);
        assertEquals(1, pins.all().size());
        assertTrue(pins.all().get(0).drawn().earlier().isEmpty());
        pins.unpin(pins.all().get(0));
        assertTrue(pins.all().isEmpty());
    }
}
