package coldwright.play;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.ExpressionEvaluator;
import coldwright.bench.RunOutcome;
import coldwright.bench.SnippetProblem;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonReader;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.List;
import java.util.Map;

/** The order of a lesson's events, and what runs above what; the bench here is a fake. */
class LessonPlayerTest {
    private static final Lesson LESSON =
            LessonReader.read(
                    "oats.md",
                    """
                    # Oats

                    ## Toast

                    ```forecast
                    How hot?
                    number: 140 °C within 5

                    It is 140<!-- = heat --> °C.
                    ```

                    ```java given
                    int tray = 1;
                    ```

                    ```java
                    double heat = 140;
                    ```

                    It has 140<!-- = heat + 0 --> °C, on tray 1<!-- = tray -->.

                    ```check
                    heat is 140 within 5
                    heat > 200 is true
                    ```

                    ```teacher
                    Mind the smoke.
                    ```

                    ## Malt

                    ```java
                    double malt = 10;
                    ```

                    ```java solution
                    double malt = 20;
                    ```

                    ```check
                    malt is 20 within 0
                    ```

                    ## Taste

                    ```forecast
                    Sweet?
                    - yes
                    - * no
                    ```

                    ```java
                    double ready = malt;
                    ```
                    """);

    private final FakeRunner runner =
            new FakeRunner()
                    .gives("heat", "140.0", "Double")
                    .gives("heat + 0", "140.0", "Double")
                    .gives("tray", "1", "Integer")
                    .gives("heat > 200", "false", "Boolean")
                    .gives("malt", "20.0", "Double");
    private final WrittenEvents events = new WrittenEvents();

    private LessonPlayer player(PlayMode mode, SnippetTexts texts) {
        assertEquals(List.of(), LESSON.faults());
        return new LessonPlayer(LESSON, mode, texts, runner);
    }

    private void play(PlayMode mode) {
        player(mode, SnippetTexts.AUTHORS).play(events);
    }

    private List<String> aboveOf(String snippet) {
        return runner.asked.stream()
                .filter(one -> one.snippet().equals(snippet))
                .findFirst()
                .orElseThrow()
                .above();
    }

    @Test
    void aLearnerHearsOfEachPartInOrder() {
        play(PlayMode.LEARN);
        assertEquals(
                List.of(
                        "step 0 ",
                        "end",
                        "step 1 Toast",
                        "asked How hot?",
                        "comes int tray = 1;",
                        "ran int tray = 1; Finished",
                        "comes double heat = 140;",
                        "ran double heat = 140; Finished",
                        "answered 1 Finished",
                        "prose",
                        "check of 2",
                        "PASSED heat",
                        "MISSED heat > 200",
                        "note",
                        "end",
                        "step 2 Malt",
                        "comes double malt = 10;",
                        "ran double malt = 10; Finished",
                        "check of 1",
                        "PASSED malt",
                        "end",
                        "step 3 Taste",
                        "asked Sweet?",
                        "comes double ready = malt;",
                        "ran double ready = malt; Finished",
                        "answered 1 Finished",
                        "end"),
                events.lines);
    }

    @Test
    void aCheckTriesAllClaimsSinceTheLastSnippetTogether() {
        play(PlayMode.CHECK);
        List<String> verdicts =
                events.lines.stream().filter(line -> line.matches("[A-Z]{6} .*")).toList();
        assertEquals(
                List.of(
                        "PASSED heat",
                        "PASSED heat + 0",
                        "PASSED tray",
                        "PASSED heat",
                        "MISSED heat > 200",
                        "PASSED malt"),
                verdicts);
        List<String> ran = runner.snippets();
        assertTrue(ran.get(2).contains("= (tray\n"), ran.get(2));
        assertEquals("double malt = 10;", ran.get(3), "only what has no result is tried alone");
    }

    @Test
    void aConditionThatFailsGivesTheValuesThatItCompares() {
        play(PlayMode.LEARN);
        assertEquals(Map.of("heat", 140.0), events.missed.get(0).compared());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "a > 3 ; a",
                "a >= 12 && a <= b ; a, b",
                "f(a > 1, x) < g.of(\"<\") * 2 && 1 < c ; f(a > 1, x), g.of(\"<\") * 2, c",
                "isSafe() && a < 2 ; a",
                "isSafe() ; ''",
                "a < 2 || b < 3 ; ''",
                "!(a < 2) ; ''",
            })
    void theSidesOfComparisonsAreCompared(String condition, String values) {
        assertEquals(values, String.join(", ", ComparedValues.of(condition)));
    }

    @Test
    void aSolutionStandsInForItsSnippetToTheStepsEnd() {
        play(PlayMode.CHECK);
        assertTrue(events.lines.contains("solved double malt = 20; Finished"));
        assertEquals(
                "double malt = 20;",
                aboveOf(ExpressionEvaluator.snippet(List.of("malt"))).stream()
                        .filter(text -> !text.contains("given_"))
                        .reduce((one, next) -> next)
                        .orElseThrow(),
                "in the step");
        assertEquals(
                List.of("int tray = 1;", "double heat = 140;", "double malt = 10;"),
                aboveOf("double ready = malt;").stream()
                        .filter(text -> text.contains(" = ") && !text.contains("given_"))
                        .toList(),
                "below the step");
    }

    @Test
    void aSolutionForPaperRunsBesideItsSnippet() {
        play(PlayMode.PRINT_SOLVED);
        assertEquals(aboveOf("double malt = 10;"), aboveOf("double malt = 20;"));
        assertEquals(
                List.of("int tray = 1;", "double heat = 140;", "double malt = 10;"),
                aboveOf("double ready = malt;"));
        assertTrue(events.lines.stream().noneMatch(line -> line.startsWith("PASSED")));
    }

    @Test
    void aSnippetThatFailsStopsNothingAndIsNoMoreAbove() {
        SnippetProblem problem = new SnippetProblem(0, 1, 1, "too hot", "");
        runner.ends("double heat = 140;", new RunOutcome.Threw(problem))
                .ends("heat", new RunOutcome.Rejected(List.of(problem)));
        play(PlayMode.LEARN);
        assertTrue(events.lines.contains("ran double heat = 140; Threw"));
        assertTrue(events.lines.contains("answered 1 Threw"));
        assertTrue(events.lines.contains("FAILED heat"));
        assertEquals(
                List.of("int tray = 1;"),
                aboveOf("double malt = 10;").stream()
                        .filter(text -> !text.contains("given_"))
                        .toList());
        assertTrue(events.lines.contains("ran double ready = malt; Finished"));
    }

    @Test
    void aSnippetThatWasStoppedIsNoMoreAbove() {
        runner.ends("double malt = 10;", new RunOutcome.Stopped());
        play(PlayMode.PRINT);
        assertTrue(events.lines.contains("ran double malt = 10; Stopped"));
        assertEquals(
                List.of("int tray = 1;", "double heat = 140;"), aboveOf("double ready = malt;"));
    }

    @Test
    void stepsPassedOverRunSilently() {
        SnippetTexts hotter = (step, index, text) -> text.replace("140", "180");
        LessonPlayer player = player(PlayMode.LEARN, hotter);
        player.skip(0);
        player.skip(1);
        player.play(2, events);
        assertEquals(
                List.of(
                        "step 2 Malt",
                        "comes double malt = 10;",
                        "ran double malt = 10; Finished",
                        "check of 1",
                        "PASSED malt",
                        "end changed above"),
                events.lines);
        assertEquals(List.of("int tray = 1;", "double heat = 180;"), aboveOf("double malt = 10;"));
    }

    @Test
    void theLearnersTextRunsInPlaceOfTheAuthors() {
        SnippetTexts own =
                (step, index, text) ->
                        step.equals("Toast") && index == 1 ? "double heat = 90;" : text;
        player(PlayMode.LEARN, own).play(events);
        assertTrue(events.lines.contains("ran double heat = 90; Finished"));
        assertEquals(1, events.lines.stream().filter("end changed"::equals).count());
        assertEquals(2, events.lines.stream().filter("end changed above"::equals).count());
    }

    @Test
    void aQuestionThatNoRunAnswersIsAnsweredAtTheStepsEnd() {
        Lesson unasked =
                LessonReader.read("a.md", "# A\n\n## B\n\n```forecast\nWhy?\n- x\n- * y\n```\n");
        new LessonPlayer(unasked, PlayMode.LEARN, SnippetTexts.AUTHORS, runner).play(events);
        assertEquals(
                List.of("step 0 ", "end", "step 1 B", "asked Why?", "answered 1 -", "end"),
                events.lines);
    }
}
