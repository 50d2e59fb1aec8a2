package coldwright.desk.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Figure;
import coldwright.paint.style.FigureFormat;

import org.junit.jupiter.api.Test;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;

class LatestRenderTest {
    private final Queue<Runnable> pen = new ArrayDeque<>();
    private final List<String> painted = new ArrayList<>();
    private final List<Throwable> broken = new ArrayList<>();

    private LatestRender brush(FigurePainter painter) {
        return new LatestRender(
                new RenderContext(painter, pen::add, Runnable::run),
                is -> painted.add(is.exhibit().title()),
                broken::add);
    }

    private static RenderRequest of(String title) {
        return new RenderRequest(Figure.of(title), Optional.empty(), 0, Optional.empty());
    }

    @Test
    void ofAllThatIsAskedForMeanwhileOnlyTheNewestIsPainted() {
        LatestRender latestRender = brush(FigurePainter.STILL);
        for (int i = 0; i < 50; i++) {
            latestRender.ask(of("turn " + i), FigureFormat.of(80, 60));
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
        LatestRender latestRender =
                brush(
                        (renderRequest, sheet) -> {
                            if (renderRequest.exhibit().title().equals("bad")) {
                                throw new IllegalStateException("no ink");
                            }
                            return FigurePainter.STILL.paint(renderRequest, sheet);
                        });
        latestRender.ask(of("bad"), FigureFormat.of(80, 60));
        latestRender.ask(of("good"), FigureFormat.of(80, 60));
        pen.remove().run();
        pen.remove().run();
        assertEquals(1, broken.size());
        assertEquals(List.of("good"), painted);
    }
}
