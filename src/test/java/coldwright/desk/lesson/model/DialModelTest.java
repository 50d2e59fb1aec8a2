package coldwright.desk.lesson.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.compile.SnippetSource;
import coldwright.desk.figure.model.ShownFigure;
import coldwright.desk.model.ByHandRunner;
import coldwright.desk.page.TestDesk;
import coldwright.figure.Figure;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Map;

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
        lesson = TestDesk.lesson(LESSON, runner);
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

    private SnippetSource asked() {
        return runner.last().snippets().get(runner.last().snippets().size() - 1);
    }

    @Test
    void whatIsCompiledStaysWhileOnlyADialsNumberChanges() {
        String first = snippet(0).text().get();
        int number = first.indexOf("120");
        dial().turn(150);
        assertEquals(Map.of(number, 150.0), asked().values());
        runner.finish();
        dial().rest();
        snippet(0).run();
        assertEquals(first.replace("120", "150"), asked().text());
        assertEquals(first, asked().compiledText());
        runner.finish();
        snippet(0).text().set(first.replace("120", "95"));
        snippet(0).run();
        assertEquals(first, asked().compiledText());
        assertEquals(Map.of(number, 95.0), asked().values());
        runner.finish();
        dial().turn(120);
        assertEquals(Map.of(), asked().values());
    }

    @Test
    void anyOtherChangeIsCompiled() {
        String first = snippet(0).text().get();
        for (String now :
                List.of(
                        first.replace("sugar * 2", "sugar * 3"),
                        first.replace("120", ""),
                        first.replace("120", "0x10"),
                        first.replace("120", "010"),
                        first.replace("120", "100 + 20"))) {
            snippet(0).text().set(now);
            snippet(0).run();
            assertEquals(new SnippetSource(now, now, Map.of()), asked());
            runner.finish();
            snippet(0).text().set(first);
            snippet(0).run();
            assertEquals(new SnippetSource(first, first, Map.of()), asked());
            runner.finish();
        }
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
        assertEquals("2 of 3", lesson.chain().progress().get().replace("running ", ""));
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
