package coldwright.desk.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.figure.model.CurveSketch;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.PredictionModel;
import coldwright.desk.lesson.model.SnippetModel;
import coldwright.desk.page.TestDesk;
import coldwright.figure.Figure;
import coldwright.figure.Series;
import coldwright.workbook.handin.PredictionOutcome;
import coldwright.workbook.work.LearnerAnswer;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Optional;

/** A curve drawn before the run, from the pad to the figure of the result. */
class DrawnPredictionTest {
    private final ByHandRunner bench = new ByHandRunner();
    private final LessonModel lesson =
            TestDesk.lesson(
                    """
                            # Ice

                            ## One

                            ```forecast
                            How does it fall?
                            curve: sucrose 0 to 40 %; freezing point −12 to 0 °C

                            So it is.
                            ```

                            ```java
                            int a = 1;
                            ```
                            """,
                    bench);
    private final PredictionModel forecast = lesson.steps().get(0).predictions().get(0);
    private final SnippetModel snippet = lesson.steps().get(0).snippets().get(0);

    @Test
    void standsInTheFigureOfTheResultAndIsComparedWithIt() {
        CurveSketch sketch = forecast.sketch().orElseThrow();
        sketch.draw(new LearnerAnswer.Point(0, 0), new LearnerAnswer.Point(40, -8));
        assertEquals(Optional.empty(), forecast.distance(), "there is no result yet");
        snippet.run();
        bench.finish("", Figure.of("It").line("computed", 0, 40, x -> -2 - x / 5));
        assertTrue(forecast.revealed().get());
        Figure shown = (Figure) snippet.result().drawn().get(0).shown();
        assertEquals(
                List.of("computed", CurveSketch.name()),
                shown.series().stream().map(Series::name).toList());
        assertEquals(
                Optional.of("On average your curve is 2 °C away from the result."),
                forecast.distance());
        assertEquals(PredictionOutcome.OPEN, forecast.verdict());
        assertEquals(
                Optional.of("falls from 0 to −8 °C as sucrose rises from 0 to 40 %"),
                forecast.answerText());
    }

    @Test
    void whereNothingWasDrawnTheFigureStandsAlone() {
        snippet.run();
        bench.finish("", Figure.of("It").line("computed", 0, 40, x -> -x / 5));
        assertEquals(1, ((Figure) snippet.result().drawn().get(0).shown()).series().size());
        assertEquals(Optional.empty(), forecast.distance());
    }
}
