package coldwright.desk.lesson.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.RunOutcome;
import coldwright.desk.figure.model.ShownFigure;
import coldwright.desk.model.ByHandRunner;
import coldwright.desk.page.TestDesk;
import coldwright.figure.Figure;
import coldwright.workbook.handin.PredictionOutcome;

import org.junit.jupiter.api.Test;

import java.util.Optional;

class PredictionModelTest {
    private final ByHandRunner bench = new ByHandRunner();
    private final LessonModel lesson =
            TestDesk.lesson(
                    """
                            # Ice

                            ## One

                            ```forecast
                            At what temperature?
                            number: -1.5 °C within 0.5

                            So it is.
                            ```

                            ```forecast
                            Which?
                            - this
                            - * that
                            ```

                            ```java
                            int a = 1;
                            ```
                            """,
                    bench);
    private final PredictionModel number = (PredictionModel) lesson.steps().get(0).parts().get(0);
    private final PredictionModel choice = (PredictionModel) lesson.steps().get(0).parts().get(1);
    private final SnippetModel snippet = lesson.steps().get(0).snippets().get(0);

    @Test
    void isAnsweredByARunThatEndsWell() {
        snippet.run();
        bench.end(new RunOutcome.Stopped(), "");
        assertFalse(number.revealed().get());
        snippet.run();
        bench.finish("");
        assertTrue(number.revealed().get());
        assertTrue(choice.revealed().get());
    }

    @Test
    void aPredictedNumberIsMarkedOnTheAxisOfItsUnit() {
        number.typed().set("−1.2");
        Figure figure =
                Figure.of("f").x("sugar", "%").y("first ice", "°C").line("l", 0, 9, w -> -w);
        snippet.run();
        bench.finish(figure);
        ShownFigure shown = snippet.result().drawn().get(0);
        assertEquals(figure, shown.exhibit());
        assertEquals(figure.markY("your prediction", -1.2), shown.shown());
        snippet.run();
        bench.finish(figure.x("warmth", "°C"));
        assertEquals(
                figure.x("warmth", "°C"),
                snippet.result().drawn().get(0).shown(),
                "both axes have its unit");
    }

    @Test
    void readsANumberAsPeopleTypeIt() {
        for (String typed : new String[] {"-1.2", "−1,2", " - 1.2 °C ", "–1.2°C", "-1.20"}) {
            number.typed().set(typed);
            assertEquals(PredictionOutcome.YES, number.verdict(), typed);
            assertEquals(Optional.of("−1.2\u00A0°C"), number.answerText(), typed);
            assertEquals(Optional.empty(), number.inputError(), typed);
        }
        number.typed().set("1.2");
        assertEquals(PredictionOutcome.NO, number.verdict());
        number.typed().set("-2.0");
        assertEquals(PredictionOutcome.YES, number.verdict());
        assertEquals("−1.5\u00A0°C", number.right());
    }

    @Test
    void saysWhatIsNoNumber() {
        number.typed().set("cold");
        assertEquals(PredictionOutcome.OPEN, number.verdict());
        assertEquals(
                Optional.of("“cold” isn’t a number. Write one like −1.5."), number.inputError());
    }

    @Test
    void weighsAChoice() {
        assertEquals(PredictionOutcome.OPEN, choice.verdict());
        choice.chosen().set(0);
        assertEquals(PredictionOutcome.NO, choice.verdict());
        assertEquals(Optional.of("this"), choice.answerText());
        choice.chosen().set(1);
        assertEquals(PredictionOutcome.YES, choice.verdict());
        assertEquals("that", choice.right());
    }
}
