package coldwright.desk.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.PredictionModel;
import coldwright.desk.lesson.model.WorkMapper;
import coldwright.desk.page.TestDesk;
import coldwright.workbook.handin.PredictionOutcome;
import coldwright.workbook.work.LessonWork;

import org.junit.jupiter.api.Test;

import java.util.Optional;

/** A question without a run in the window, before it has a view. */
class QuestionModelTest {
    private final ByHandRunner bench = new ByHandRunner();

    private LessonModel lesson() {
        return TestDesk.lesson(
                """
                # Ice

                ## Before

                ```question
                Which of them are water?
                - * ice
                - fat
                - * steam
                ```

                ```forecast
                How hot?
                - cold
                - * hot
                ```

                ```java
                double heat = 180;
                ```
                """,
                bench);
    }

    private static PredictionModel question(LessonModel lesson) {
        return lesson.steps().get(0).predictions().get(0);
    }

    @Test
    void theLearnerRevealsItAndNoRunDoes() {
        LessonModel lesson = lesson();
        PredictionModel question = question(lesson);
        lesson.steps().get(0).snippets().get(0).run();
        bench.finish("");
        assertTrue(question.withoutRun());
        assertFalse(question.revealed().get());
        assertTrue(lesson.steps().get(0).predictions().get(1).revealed().get());
        question.typed().set("ice; steam");
        question.reveal();
        assertTrue(question.revealed().get());
        assertEquals(PredictionOutcome.YES, question.verdict());
        assertEquals("ice; steam", question.right());
        assertEquals(Optional.of("ice; steam"), question.answerText());
        assertEquals(Optional.empty(), question.inputError());
    }

    @Test
    void theAnswerIsKept() {
        LessonModel lesson = lesson();
        question(lesson).typed().set("fat; steam");
        LessonWork work = WorkMapper.of(lesson, WorkMapper.empty(lesson));
        LessonModel again = lesson();
        WorkMapper.restore(work, again);
        assertEquals("fat; steam", question(again).typed().get());
        assertEquals(PredictionOutcome.NO, question(again).verdict());
        assertFalse(question(again).revealed().get());
    }
}
