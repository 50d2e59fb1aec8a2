package coldwright.workbook.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonReader;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** An author may change a lesson; no learner's word is lost by it. */
class SnippetMatchingTest {
    private static final String HEAT = "double heat = 180;";
    private static final String OATS = "double oats = 40;";
    private static final LessonKey KEY = LessonKey.ofCourse("01-oats");

    private static Lesson lesson(String text) {
        return LessonReader.read("oats.md", "# Oats\n\n" + text);
    }

    private static String java(String code) {
        return "```java\n" + code + "\n```\n\n";
    }

    private static LessonWork fitted(LessonWork work, Lesson lesson) {
        return work.fittedTo(lesson, ContentHash.of("new"));
    }

    private static ContentHash hash(String code) {
        return ContentHash.of(code);
    }

    private static LessonWork heated() {
        return LessonWork.empty(KEY, "oats.md", "Oats", ContentHash.of("old"))
                .withSnippet("Toast", new SnippetEdit(0, "double heat = 140;", hash(HEAT)));
    }

    @Test
    void anEditFollowsItsSnippetWithinItsStep() {
        LessonWork work = fitted(heated(), lesson("## Toast\n\n" + java(OATS) + java(HEAT)));
        assertEquals(
                List.of(new SnippetEdit(1, "double heat = 140;", hash(HEAT))),
                work.step("Toast").edits());
        assertEquals(ContentHash.of("new"), work.lessonHash());
    }

    @Test
    void anEditFollowsItsSnippetToAnotherStep() {
        LessonWork work = fitted(heated(), lesson("## Roast\n\n" + java(HEAT)));
        assertEquals("double heat = 140;", work.step("Roast").textOf(0, HEAT));
        assertTrue(work.step("Toast").isEmpty());
    }

    @Test
    void theEditOfAChangedSnippetIsKeptAsideAndComesBack() {
        Lesson old = lesson("## Toast\n\n" + java(HEAT));
        Lesson changed = lesson("## Toast\n\n" + java("double heat = 170;"));
        LessonWork work = fitted(heated(), changed);
        assertEquals(List.of(), work.step("Toast").edits());
        assertEquals(heated().step("Toast").edits(), work.step("Toast").aside());
        LessonWork again =
                work.withSnippet(
                        "Toast",
                        new SnippetEdit(0, "double heat = 1;", hash("double heat = 170;")));
        LessonWork back = fitted(again, old);
        assertEquals(heated().step("Toast").edits(), back.step("Toast").edits());
        assertEquals(again.step("Toast").edits(), back.step("Toast").aside());
    }

    @Test
    void twoSnippetsOfOneTextKeepTheirOwnEdits() {
        LessonWork work = heated().withSnippet("Toast", new SnippetEdit(1, "other", hash(HEAT)));
        Lesson same = lesson("## Toast\n\n" + java(HEAT) + java(HEAT));
        assertEquals(work.step("Toast"), fitted(work, same).step("Toast"));
    }

    @Test
    void anAnswerFollowsItsQuestionAndAnAnswerToNoneIsKept() {
        String asked = "```forecast\n%s\nnumber: 3 within 1\n```\n\n" + java(HEAT);
        LessonWork work =
                heated().withPrediction(
                                "Toast",
                                new GivenPrediction(0, "How hot?", new LearnerAnswer.Typed("3")))
                        .withPrediction(
                                "Toast",
                                new GivenPrediction(1, "How long?", new LearnerAnswer.Typed("9")));
        Lesson changed =
                lesson("## Toast\n\n" + asked.formatted("How dark?") + asked.formatted("How hot?"));
        StepWork step = fitted(work, changed).step("Toast");
        assertEquals(Optional.empty(), step.answer(0, "How dark?"));
        assertEquals(Optional.of(new LearnerAnswer.Typed("3")), step.answer(1, "How hot?"));
        assertEquals(Optional.of(new LearnerAnswer.Typed("9")), step.answer(2, "How long?"));
    }

    @Test
    void theAnswersOfAStepThatWasRenamedGoWithItAndComeBack() {
        String ask = "```forecast\nHow hot?\nnumber: 180 °C within 5\n\nSo.\n```\n\n";
        GivenPrediction answer = new GivenPrediction(0, "How hot?", new LearnerAnswer.Typed("170"));
        LessonWork work = heated().withPrediction("Toast", answer);
        Lesson renamed = lesson("## First\n\nText.\n\n## Roast\n\n" + ask + java(HEAT));
        LessonWork now = fitted(work, renamed);
        assertEquals(List.of(answer), now.step("Roast").predictions());
        assertEquals("double heat = 140;", now.step("Roast").textOf(0, HEAT));
        assertTrue(now.step("Toast").isEmpty());
        LessonWork back = fitted(now, lesson("## Toast\n\n" + ask + java(HEAT)));
        assertEquals(work.step("Toast"), back.step("Toast"));
        Lesson other = lesson("## Bake\n\n" + ask.replace("hot", "long") + java(OATS));
        assertEquals(List.of(answer), fitted(work, other).step("Toast").predictions());
    }

    @Test
    void aChoiceIsFoundByItsWords() {
        LearnerAnswer.Choice choice = new LearnerAnswer.Choice(1, "about three");
        assertEquals(OptionalInt.of(1), choice.among(List.of("about one", "about three")));
        assertEquals(OptionalInt.of(0), choice.among(List.of("about three", "about one")));
        assertEquals(OptionalInt.empty(), choice.among(List.of("one", "two")));
    }

    @Test
    void theAuthorsOwnTextIsNoEdit() {
        assertTrue(
                heated().withSnippet("Toast", new SnippetEdit(0, HEAT, hash(HEAT)))
                        .steps()
                        .isEmpty());
        assertTrue(heated().withStep(heated().step("Toast").withoutSnippet(0)).steps().isEmpty());
    }

    @Test
    void stepsOfOneTitleHaveTwoNames() {
        Lesson lesson = lesson("## Toast\n\nA\n\n## Toast\n\nB\n\n## Toast (2)\n\nC\n");
        List<String> names = StepNames.of(lesson);
        assertEquals(lesson.steps().size(), names.stream().distinct().count(), names::toString);
    }
}
