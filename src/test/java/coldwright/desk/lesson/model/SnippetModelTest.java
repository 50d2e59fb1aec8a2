package coldwright.desk.lesson.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.RunOutcome;
import coldwright.bench.SnippetProblem;
import coldwright.desk.figure.model.ShownFigure;
import coldwright.desk.lesson.model.SnippetModel.Phase;
import coldwright.desk.model.ByHandRunner;
import coldwright.desk.page.TestDesk;
import coldwright.figure.Figure;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Optional;

class SnippetModelTest {
    private final ByHandRunner bench = new ByHandRunner();
    private final LessonModel lesson =
            TestDesk.lesson(
                    """
                            # Ice

                            ## One

                            ```java
                            int a = 1;
                            ```

                            ## Two

                            ```java given
                            int b = 2;
                            ```

                            ```java
                            a + b
                            ```
                            """,
                    bench);
    private final SnippetModel first = lesson.steps().get(0).snippets().get(0);
    private final SnippetModel given = lesson.steps().get(1).snippets().get(0);
    private final SnippetModel second = lesson.steps().get(1).snippets().get(1);

    @Test
    void runsWithTheTextsAboveAsTheyStand() {
        first.text().set("int a = 5;");
        second.run();
        assertEquals(List.of("int a = 5;", "int b = 2;"), bench.last().above());
        assertEquals("a + b", bench.last().snippet());
        assertEquals(Phase.RUNNING, second.phase().get());
        bench.finish("7\n");
        assertEquals(Phase.RESTING, second.phase().get());
        assertEquals("7", second.result().printed().get().head());
        assertTrue(second.result().everFinished().get());
    }

    @Test
    void waitsForItsTurnAndCanBeTakenBack() {
        first.run();
        second.run();
        assertEquals(Phase.WAITING, second.phase().get());
        assertEquals(1, bench.asked.size());
        second.stop();
        assertEquals(Phase.RESTING, second.phase().get());
        assertEquals(0, bench.stops);
        bench.finish("");
        assertEquals(1, bench.asked.size());
    }

    @Test
    void readsTheTextWhenItsTurnComes() {
        first.run();
        second.run();
        second.text().set("a * b");
        bench.finish("");
        assertEquals("a * b", bench.last().snippet());
    }

    @Test
    void stopsTheBenchOnlyForTheRunThatGoesOn() {
        first.run();
        first.run();
        assertEquals(1, bench.asked.size());
        first.stop();
        assertEquals(1, bench.stops);
        bench.end(new RunOutcome.Stopped(), "so far");
        assertEquals(Phase.RESTING, first.phase().get());
        assertEquals("so far", first.result().printed().get().head());
        assertFalse(first.result().everFinished().get());
    }

    @Test
    void keepsTheEarlierFigureBehindTheNew() {
        Figure one = Figure.of("one");
        Figure two = Figure.of("two");
        first.run();
        bench.finish("", one);
        assertEquals(List.of(new ShownFigure(one, Optional.empty())), first.result().drawn());
        first.run();
        bench.finish("", two);
        assertEquals(List.of(new ShownFigure(two, Optional.of(one))), first.result().drawn());
        assertEquals(first.result().drawn(), lesson.steps().get(0).drawn());
    }

    @Test
    void aRunThatFailsLeavesTheFiguresWhereTheyAre() {
        first.run();
        bench.finish("", Figure.of("one"));
        first.run();
        bench.end(rejected(), "");
        assertEquals(1, first.result().drawn().size());
        assertEquals(1, first.result().problems().size());
        assertTrue(first.result().everFinished().get());
    }

    @Test
    void aChangeMakesWhatIsShownOld() {
        first.run();
        bench.end(rejected(), "");
        assertFalse(first.result().changedSinceRun().get());
        first.text().set("int a = 2;");
        assertTrue(first.result().changedSinceRun().get());
        assertEquals(List.of(), first.result().problems());
        assertTrue(first.edited().getValue());
        first.reset();
        assertEquals("int a = 1;", first.text().get());
        assertFalse(first.edited().getValue());
    }

    @Test
    void aChangeDuringTheRunCountsToo() {
        first.run();
        first.text().set("int a = 9;");
        bench.end(rejected(), "");
        assertTrue(first.result().changedSinceRun().get());
    }

    @Test
    void showsWhatIsPrintedWhileItRuns() {
        first.run();
        bench.last().watcher().printed("one\n");
        bench.last().watcher().printed("two\n");
        assertEquals("one\ntwo", first.result().printed().get().head());
        bench.last().watcher().above(1, 3);
        assertEquals("running the snippets above first: 2 of 3", first.progress().get());
    }

    @Test
    void aBenchThatCantRunIsToldInASentence() {
        first.run();
        bench.last().answer().completeExceptionally(new IllegalStateException("no Java found"));
        assertEquals(
                new RunOutcome.Died("snippets can’t run now: no Java found"),
                first.result().lastRun().get().outcome());
        assertEquals(Phase.RESTING, first.phase().get());
    }

    @Test
    void whatIsGivenRunsWhenItsStepComesInSightAndOnlyOnce() {
        assertNull(given.result().lastRun().get());
        lesson.arrive(lesson.steps().get(1));
        assertEquals("int b = 2;", bench.last().snippet());
        bench.finish("");
        lesson.arrive(lesson.steps().get(1));
        assertEquals(1, bench.asked.size());
    }

    @Test
    void whatIsGivenAndFailedRunsAgainOnceItsStepRan() {
        given.run();
        bench.end(new RunOutcome.AboveFailed(0, rejected()), "");
        assertEquals("The snippet of “One” above didn’t finish: no", given.ending());
        second.run();
        bench.finish("");
        assertEquals("int b = 2;", bench.last().snippet());
        bench.finish("");
        assertTrue(given.result().everFinished().get());
    }

    @Test
    void aStepIsDoneWhenItsOwnSnippetsRan() {
        StepModel step = lesson.steps().get(1);
        given.run();
        bench.finish("");
        assertFalse(step.done().get());
        second.run();
        bench.end(rejected(), "");
        assertFalse(step.done().get());
        second.run();
        bench.finish("");
        assertTrue(step.done().get());
    }

    private static RunOutcome rejected() {
        return new RunOutcome.Rejected(List.of(new SnippetProblem(4, 5, 1, "no", "no")));
    }
}
