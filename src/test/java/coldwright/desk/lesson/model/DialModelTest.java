package coldwright.desk.lesson.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.figure.model.ShownFigure;
import coldwright.desk.model.ByHandRunner;
import coldwright.desk.run.RunQueue;
import coldwright.figure.Figure;
import coldwright.lesson.LessonReader;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import java.nio.charset.StandardCharsets;
import java.util.List;

/** Dials, what hangs on them, and what is out of date. */
final class DialModelTest {
    private static final String LESSON =
            """
            # Sugar

            ## One

            ```java
            double sugar = 120; // dial 0 to 300 step 5 g
            sugar * 2
            ```

            ## Two

            ```java
            double more = sugar + 1;
            ```

            ## Three

            ```java
            double salt = 3;
            ```

            ## Four

            ```java
            more + 1
            ```
            """;

    private final ByHandRunner runner = new ByHandRunner();
    private LessonModel lesson;

    @BeforeEach
    void read() {
        lesson =
                new LessonModel(
                        LessonReader.read("sugar.md", LESSON.getBytes(StandardCharsets.UTF_8)),
                        new RunQueue(runner, Runnable::run),
                        Runnable::run);
    }

    private SnippetModel snippet(int step) {
        return lesson.snippets().get(step);
    }

    private DialModel dial() {
        return snippet(0).dials().get(0);
    }

    @Test
    void aTurnRunsWithTheNewNumberAndLeavesTheTextUntilItRests() {
        dial().turn(152);
        assertEquals(150, dial().value().get(), "the nearest notch");
        assertTrue(runner.snippet().contains("sugar = 150;"));
        assertTrue(snippet(0).text().get().contains("sugar = 120;"));
        assertEquals(SnippetModel.Phase.RESTING, snippet(0).phase().get(), "quick turns are quiet");
        runner.finish();
        assertFalse(snippet(0).result().changedSinceRun().get());
        dial().rest();
        assertTrue(snippet(0).text().get().contains("sugar = 150; // dial"));
    }

    @Test
    void theNewestPositionWinsAndOlderWorkIsDropped() {
        dial().turn(10);
        dial().turn(20);
        dial().turn(30);
        dial().turn(40);
        assertEquals(1, runner.begun(), "one goes on");
        runner.finish();
        assertEquals(2, runner.begun(), "and only the newest after it");
        assertTrue(runner.snippet().contains("sugar = 40;"));
        runner.finish();
        assertEquals(2, runner.begun());
    }

    @Test
    void whatHangsOnTheDialAndRanBeforeRunsAgain() {
        lesson.runAll();
        for (int i = 0; i < 4; i++) {
            runner.finish();
        }
        dial().turn(200);
        runner.finish();
        assertEquals("double more = sugar + 1;", runner.snippet().strip());
        assertTrue(runner.above().get(0).contains("sugar = 200;"));
        runner.finish();
        assertEquals("more + 1", runner.snippet().strip(), "what shares no name is left alone");
        runner.finish();
        assertEquals(7, runner.begun());
    }

    @Test
    void anEditMarksWhatHangsOnItAndNothingElse() {
        lesson.runAll();
        for (int i = 0; i < 4; i++) {
            runner.finish();
        }
        snippet(0).text().set(snippet(0).text().get().replace("120", "125"));
        assertEquals(
                List.of(true, true, false, true),
                lesson.snippets().stream().map(one -> one.result().outOfDate().get()).toList());
        lesson.runFrom(snippet(1));
        runner.finish();
        assertEquals("2 of 3", lesson.chain().progress().get().replace("runs ", ""));
        assertFalse(snippet(1).result().outOfDate().get(), "it ran with what stands now");
        assertTrue(snippet(0).result().outOfDate().get(), "its own text was not run as a whole");
        lesson.chain().stop();
        runner.finish();
        assertFalse(lesson.chain().going().get());
        assertTrue(snippet(3).result().outOfDate().get());
    }

    @Test
    void theEarlierTraceStaysWhereTheDialBegan() {
        Figure[] figures = {Figure.of("a"), Figure.of("b"), Figure.of("c"), Figure.of("d")};
        snippet(0).run();
        runner.finish(figures[0]);
        dial().turn(10);
        runner.finish(figures[1]);
        dial().turn(20);
        runner.finish(figures[2]);
        ShownFigure shown = snippet(0).result().drawn().get(0);
        assertEquals(figures[2], shown.exhibit());
        assertEquals(figures[0], shown.earlier().orElseThrow());
        dial().rest();
        runner.finish(figures[2]);
        assertEquals(shown, snippet(0).result().drawn().get(0), "resting changes nothing");
        dial().turn(30);
        runner.finish(figures[3]);
        assertEquals(figures[2], snippet(0).result().drawn().get(0).earlier().orElseThrow());
    }

    @Test
    void aTypedNumberNeedBeNoNotch() {
        dial().type(101.25);
        assertTrue(snippet(0).text().get().contains("sugar = 101.25;"));
        dial().type(1e9);
        assertTrue(snippet(0).text().get().contains("sugar = 300;"));
    }

    @Test
    void typingInTheTextMovesTheDial() {
        DialModel dial = dial();
        snippet(0).text().set("double sugar = 55; // dial 0 to 300 step 5 g");
        assertEquals(dial, dial(), "the slider under a hand stays");
        assertEquals(55, dial.value().get());
        snippet(0).text().set("double sugar = 55;");
        assertTrue(snippet(0).dials().isEmpty());
    }
}
