package coldwright.desk.lesson.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.RunOutcome;
import coldwright.bench.SnippetProblem;
import coldwright.desk.lesson.model.CheckLine.State;
import coldwright.desk.model.ByHandRunner;
import coldwright.desk.page.TestDesk;

import org.junit.jupiter.api.Test;

import java.util.List;

class CheckModelTest {
    private final ByHandRunner bench = new ByHandRunner();
    private final LessonModel lesson =
            TestDesk.lesson(
                    """
                            # Ice

                            ## One

                            ```java
                            double a = -1.5;
                            ```

                            ```check
                            a is -1.47 within 0.05 -- a handbook
                            a < 0 is true
                            b is 3 within 1
                            ```
                            """,
                    bench);
    private final SnippetModel snippet = lesson.steps().get(0).snippets().get(0);
    private final CheckModel check = (CheckModel) lesson.steps().get(0).parts().get(1);

    @Test
    void isOpenUntilTheSnippetRan() {
        assertEquals(List.of(State.OPEN, State.OPEN, State.OPEN), states());
        snippet.run();
        bench.end(new RunOutcome.Stopped(), "");
        assertEquals(1, bench.asked.size());
    }

    @Test
    void triesAllLinesInOneRunAboveTheSnippetAsItStands() {
        snippet.text().set("double a = -1.6;");
        snippet.run();
        bench.finish("");
        assertEquals(2, bench.asked.size());
        assertEquals(List.of("double a = -1.6;"), bench.last().above());
        assertTrue(bench.last().snippet().contains("Object given_ = all_[1] = (a < 0"));
        bench.finish(told("-1.6") + told("true") + COMPARED + told("3.5"));
        assertEquals(List.of(State.MISSED, State.PASSED, State.PASSED), states());
        assertEquals("−1.6", check.lines().get(0).got());
        assertTrue(check.onChangedText());
        assertEquals("−1.47 within 0.05", check.lines().get(0).wanted());
    }

    @Test
    void oneLineThatDoesNotCompileHidesNoOther() {
        snippet.run();
        bench.finish("");
        bench.end(rejected(), "");
        assertEquals("a", bench.snippet());
        bench.end(new RunOutcome.Finished("-1.47", "Double"), "");
        bench.end(new RunOutcome.Finished("false", "Boolean"), "");
        bench.end(rejected(), "");
        assertEquals(List.of(State.PASSED, State.MISSED, State.FAILED), states());
        assertEquals("`b` is not known here.", check.lines().get(2).got());
    }

    @Test
    void aLineThatThrowsSaysWhy() {
        snippet.run();
        bench.finish("");
        bench.finish(
                told("-1.47")
                        + told("true")
                        + COMPARED
                        + "\n\u0001\u0003\u0002massG is -5; it must be more than 0\n");
        assertEquals("b", bench.snippet(), "a line without a result is tried by itself");
        bench.end(
                new RunOutcome.Threw(
                        new SnippetProblem(0, 1, 1, "massG is -5; it must be more than 0", "")),
                "");
        assertEquals(State.FAILED, check.lines().get(2).state());
        assertEquals("massG is -5; it must be more than 0", check.lines().get(2).got());
    }

    /** What a condition compares is asked for after it; a value is given only if it fails. */
    private static final String COMPARED = "\n\u0001\u0002null\n";

    private static String told(String value) {
        String type = value.equals("true") || value.equals("false") ? "Boolean" : "Double";
        return "\n\u0001" + type + "\u0002" + value + "\n";
    }

    private List<State> states() {
        return check.lines().stream().map(CheckLine::state).toList();
    }

    private static RunOutcome rejected() {
        return new RunOutcome.Rejected(
                List.of(new SnippetProblem(0, 1, 1, "`b` is not known here.", "")));
    }
}
