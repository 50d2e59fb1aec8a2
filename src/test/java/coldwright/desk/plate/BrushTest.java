package coldwright.desk.plate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Figure;
import coldwright.paint.Sheet;

import org.junit.jupiter.api.Test;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;

class BrushTest {
    private final Queue<Runnable> pen = new ArrayDeque<>();
    private final List<String> painted = new ArrayList<>();
    private final List<Throwable> broken = new ArrayList<>();

    private Brush brush(FigurePainter painter) {
        return new Brush(
                new Pens(painter, pen::add, Runnable::run),
                is -> painted.add(is.exhibit().title()),
                broken::add);
    }

    private static Sitting of(String title) {
        return new Sitting(Figure.of(title), Optional.empty(), 0, Optional.empty());
    }

    @Test
    void ofAllThatIsAskedForMeanwhileOnlyTheNewestIsPainted() {
        Brush brush = brush(FigurePainter.STILL);
        for (int i = 0; i < 50; i++) {
            brush.ask(of("turn " + i), Sheet.of(80, 60));
        }
        assertEquals(1, pen.size(), "never more than one waits for the pen");
        pen.remove().run();
        assertEquals(1, pen.size());
        pen.remove().run();
        assertEquals(List.of("turn 0", "turn 49"), painted);
        assertTrue(pen.isEmpty());
    }

    @Test
    void aFigureThatCannotBeDrawnDoesNotStopTheNext() {
        Brush brush =
                brush(
                        (sitting, sheet) -> {
                            if (sitting.exhibit().title().equals("bad")) {
                                throw new IllegalStateException("no ink");
                            }
                            return FigurePainter.STILL.paint(sitting, sheet);
                        });
        brush.ask(of("bad"), Sheet.of(80, 60));
        brush.ask(of("good"), Sheet.of(80, 60));
        pen.remove().run();
        pen.remove().run();
        assertEquals(1, broken.size());
        assertEquals(List.of("good"), painted);
    }
}
