package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.workbook.handin.PredictionOutcome;

import org.junit.jupiter.api.Test;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;

/** Blocks of a question without a run. */
class QuestionTest {
    private static Lesson lesson(String block) {
        String text = "# Title\n\n## Step\n\n```question\n" + block + "```\n";
        return LessonReader.read("q.md", text.getBytes(StandardCharsets.UTF_8));
    }

    private static LessonPart.Question question(String block) {
        Lesson lesson = lesson(block);
        assertEquals(List.of(), lesson.faults());
        return (LessonPart.Question) lesson.steps().get(0).parts().get(0);
    }

    private static void faulty(String block, String words) {
        Lesson lesson = lesson(block);
        assertEquals(1, lesson.faults().size(), lesson.faults().toString());
        assertTrue(lesson.faults().get(0).toString().contains(words), lesson.faults().toString());
        assertTrue(lesson.faults().get(0).toString().startsWith("q.md:5:"));
        assertEquals(List.of(), lesson.steps().get(0).parts());
    }

    @Test
    void choicesReasonsAndExplanationAreRead() {
        LessonPart.Question read =
                question(
                        "What freezes\nfirst?\n- the sugar -- a common belief\n- * water -- only water freezes\n- all\n  at once\n\nBecause *ice*\nis water.\n");
        assertEquals("What freezes first?", read.question());
        assertEquals(List.of("the sugar", "water", "all at once"), read.answer().choices());
        assertEquals(List.of("a common belief", "only water freezes", ""), read.answer().reasons());
        assertEquals(Set.of(1), read.answer().right());
        assertEquals(1, read.explanation().size());
        assertEquals(5, read.line());
    }

    @Test
    void severalMayBeRight() {
        ExpectedAnswer.Several answer =
                question("Which?\n- * one\n- two\n- * three, or so\n").answer();
        assertEquals(Set.of(0, 2), answer.right());
        assertEquals("one; three, or so", answer.words(Set.of(2, 0)));
        assertEquals(Set.of(0, 2), answer.chosen("one; three, or so"));
        assertEquals(Set.of(), answer.chosen("one; four"));
        assertEquals(PredictionOutcome.YES, PredictionOutcome.of(answer, "one; three, or so"));
        assertEquals(PredictionOutcome.NO, PredictionOutcome.of(answer, "one"));
        assertEquals(PredictionOutcome.NO, PredictionOutcome.of(answer, "one; two; three, or so"));
        assertEquals(PredictionOutcome.OPEN, PredictionOutcome.of(answer, ""));
        assertEquals("one; three, or so", PredictionOutcome.words(answer));
    }

    @Test
    void aChoiceMayContainTheSeparator() {
        ExpectedAnswer.Several answer =
                question("Which?\n- * salt; sugar\n- salt\n- sugar\n").answer();
        assertEquals(Set.of(0), answer.chosen("salt; sugar"));
        assertEquals(PredictionOutcome.YES, PredictionOutcome.of(answer, "salt; sugar"));
    }

    @Test
    void itNeedsNoSnippet() {
        assertEquals(List.of(), lesson("Which?\n- * one\n- two\n").faults());
    }

    @Test
    void faultsNameTheLineAndTheFix() {
        faulty("- * one\n- two\n", "has no question");
        faulty("Which?\n- * one\n", "only one choice");
        faulty("Which?\n- one\n- two\n", "has no right answer");
        faulty("Which?\n- * one\n- one -- but why\n", "are the same");
        faulty("Which?\n- * one\n- \n", "is empty");
        faulty("Which?\nnumber: 3 within 1\n", "choices that begin");
    }

    @Test
    void aNumberInTheExplanationNeedsASnippetAbove() {
        Lesson lesson = lesson("Which?\n- * one\n- two\n\nIt is 5<!-- = 2 + 3 -->.\n");
        assertEquals(1, lesson.faults().size());
        assertEquals(9 + 1, lesson.faults().get(0).line());
    }

    @Test
    void aKitLineIsReadOrReported() {
        String text =
                "# T\n\n## S\n\n<!--\nkit: about 60 g sugar for 4\nkit: 2 gloves for class\nkit: sugar\n-->\n\nText.\n";
        Lesson lesson = LessonReader.read("k.md", text.getBytes(StandardCharsets.UTF_8));
        assertEquals(
                List.of(
                        new KitItem(60, "g", "sugar", 4, true),
                        new KitItem(2, "", "gloves", 0, false)),
                lesson.kit());
        assertEquals(1, lesson.faults().size());
        assertTrue(lesson.faults().get(0).toString().startsWith("k.md:8:"));
        assertEquals(7, lesson.kit().get(0).times(25));
        assertEquals(1, lesson.kit().get(1).times(25));
    }
}
