package coldwright.desk.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.Outcome;
import coldwright.desk.model.ForecastModel.Verdict;
import coldwright.lesson.LessonReader;

import org.junit.jupiter.api.Test;

import java.util.Optional;

class ForecastModelTest {
    private final ByHandRunner bench = new ByHandRunner();
    private final LessonModel lesson =
            new LessonModel(
                    LessonReader.read(
                            "test.md",
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
                            """),
                    new RunQueue(bench, Runnable::run),
                    Runnable::run);
    private final ForecastModel number = (ForecastModel) lesson.steps().get(0).parts().get(0);
    private final ForecastModel choice = (ForecastModel) lesson.steps().get(0).parts().get(1);
    private final SnippetModel snippet = lesson.steps().get(0).snippets().get(0);

    @Test
    void isAnsweredByARunThatEndsWell() {
        snippet.run();
        bench.end(new Outcome.Stopped(), "");
        assertFalse(number.revealed().get());
        snippet.run();
        bench.finish("");
        assertTrue(number.revealed().get());
        assertTrue(choice.revealed().get());
    }

    @Test
    void readsANumberAsPeopleTypeIt() {
        for (String typed : new String[] {"-1.2", "−1,2", " - 1.2 °C ", "–1.2°C", "-1.20"}) {
            number.typed().set(typed);
            assertEquals(Verdict.RIGHT, number.verdict(), typed);
            assertEquals(Optional.of("−1.2\u00A0°C"), number.said(), typed);
            assertEquals(Optional.empty(), number.mend(), typed);
        }
        number.typed().set("1.2");
        assertEquals(Verdict.OTHERWISE, number.verdict());
        number.typed().set("-2.0");
        assertEquals(Verdict.RIGHT, number.verdict());
        assertEquals("−1.5\u00A0°C", number.right());
    }

    @Test
    void saysWhatIsNoNumber() {
        number.typed().set("cold");
        assertEquals(Verdict.NOT_SAID, number.verdict());
        assertEquals(Optional.of("“cold” is no number; write one like −1.5"), number.mend());
    }

    @Test
    void weighsAChoice() {
        assertEquals(Verdict.NOT_SAID, choice.verdict());
        choice.chosen().set(0);
        assertEquals(Verdict.OTHERWISE, choice.verdict());
        assertEquals(Optional.of("this"), choice.said());
        choice.chosen().set(1);
        assertEquals(Verdict.RIGHT, choice.verdict());
        assertEquals("that", choice.right());
    }
}
