package coldwright.desk.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.SnippetModel;
import coldwright.desk.lesson.model.StepModel;
import coldwright.desk.page.TestDesk;

import org.junit.jupiter.api.Test;

/** A step with checks is done when it ran and all of them held. */
class StepDoneTest {
    private final ByHandRunner bench = new ByHandRunner();
    private final LessonModel lesson =
            TestDesk.lesson(
                    """
                            # Ice

                            ## Your turn

                            ```java
                            double sugar = 0;
                            ```

                            ```java solution
                            double sugar = 60;
                            ```

                            ```check
                            sugar >= 0 is true
                            sugar > 50 is true -- the task
                            ```
                            """,
                    bench);
    private final StepModel step = lesson.steps().get(0);
    private final SnippetModel snippet = step.snippets().get(0);

    /** What a condition compares is asked for after it; a value is given only if it fails. */
    private static final String COMPARED = "\n\u0001\u0002null\n";

    private static String told(String value) {
        return "\n\u0001Boolean\u0002" + value + "\n";
    }

    private void run(String sugar, boolean task) {
        snippet.text().set("double sugar = " + sugar + ";");
        snippet.run();
        bench.finish("");
        bench.finish(told("true") + COMPARED + told(String.valueOf(task)) + COMPARED);
    }

    @Test
    void theAuthorsTextThatDoesNotSolveTheTaskLeavesItOpen() {
        run("0", false);
        assertFalse(step.done().get());
        run("60", true);
        assertTrue(step.done().get());
    }

    @Test
    void doneOnceItStaysDoneWhateverIsTriedThen() {
        run("60", true);
        run("10", false);
        assertTrue(step.done().get());
        run("0", false);
        assertTrue(step.done().get());
    }

    @Test
    void itIsNotDoneBeforeTheChecksAreTried() {
        snippet.run();
        bench.finish("");
        assertFalse(step.done().get());
    }

    @Test
    void halfAnAnswerOfThisRunAndHalfOfTheLastAreNoWhole() {
        snippet.run();
        bench.finish("");
        bench.finish(told("false") + told("true"));
        snippet.text().set("double sugar = 1;");
        snippet.run();
        bench.finish("");
        bench.finish(told("true") + told("false"));
        assertFalse(step.done().get());
    }

    @Test
    void whatWasKeptAsDoneStaysSoUnlessTheUnchangedTextShowsThatItWasNot() {
        step.restore(true, true);
        run("10", false);
        assertTrue(step.done().get(), "the learner's own text may be a later trial");
        run("0", false);
        assertFalse(step.done().get());
    }

    @Test
    void begunAnewNothingIsDoneAndNothingCame() {
        run("60", true);
        lesson.reset();
        assertFalse(step.done().get());
        assertEquals("double sugar = 0;", snippet.text().get());
        assertNull(snippet.result().lastRun().get());
        step.markRead();
        assertFalse(step.done().get());
        run("70", true);
        assertTrue(step.done().get());
    }
}
