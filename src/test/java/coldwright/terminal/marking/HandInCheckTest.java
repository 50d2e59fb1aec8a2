package coldwright.terminal.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.lesson.LessonReader;
import coldwright.terminal.SharedBenches;
import coldwright.terminal.TypedSession;
import coldwright.terminal.console.ExitCode;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.GivenPrediction;
import coldwright.workbook.work.LearnerAnswer;
import coldwright.workbook.work.LessonKey;
import coldwright.workbook.work.LessonWork;
import coldwright.workbook.work.SnippetEdit;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** A teacher checks a folder of hand-ins; the bench here is real. */
class HandInCheckTest {
    private static final String HEAT = "double heat = 180;";
    private static final String TEXT =
            """
            # Toasted oats

            ## Toast

            ```forecast
            How hot?
            - 180
            - * 140
            ```

            ```java
            double heat = 180;
            ```

            ```java
            double bakeMinutes = 2400 / heat;
            ```

            ```check
            heat is 140 within 5
            bakeMinutes > 10 is true
            ```

            ## Eat

            ```java
            double ready = heat;
            ```

            ```check
            ready is 180 within 0
            ```
            """;

    @TempDir Path folder;

    private LessonWork work() {
        return LessonWork.empty(
                LessonKey.ofCourse("01-oats"), "01-oats.md", "Toasted oats", ContentHash.of(TEXT));
    }

    private void handIn(LessonWork work, String learner) throws IOException {
        Lesson lesson = LessonReader.read("01-oats.md", TEXT);
        HandIn handIn = HandIn.of(work, learner, lesson, Instant.EPOCH);
        Files.writeString(folder.resolve(handIn.fileName()), handIn.text());
    }

    private LessonWork heated(String code) {
        return work().withSnippet("Toast", new SnippetEdit(0, code, ContentHash.of(HEAT)));
    }

    private static ClassMarking checks(TypedSession typedSession, LessonFolder shelf) {
        return new ClassMarking(
                typedSession.screen(),
                shelf,
                SharedBenches.SHARED,
                Duration.ofSeconds(60),
                Optional.empty(),
                false,
                false);
    }

    private String said(int exit, LessonFolder shelf) {
        TypedSession typedSession = TypedSession.nobody();
        ClassMarking checks = checks(typedSession, shelf);
        assertEquals(exit, checks.check(List.of(folder.toString())), typedSession::out);
        return typedSession.out().replace(folder.toString().replace('\\', '/') + "/", "");
    }

    @Test
    void eachStepsSnippetsChecksAndForecastsAreJudged() throws IOException {
        Path lessons = Files.createDirectory(folder.resolve("lessons"));
        Files.writeString(lessons.resolve("01-oats.md"), TEXT);
        handIn(
                heated("double heat = 140;")
                        .withPrediction(
                                "Toast",
                                new GivenPrediction(
                                        0, "How hot?", new LearnerAnswer.Choice(1, "140")))
                        .withDone("Toast", true),
                "Ada");
        handIn(heated("double heat = 150;\nint none = 1 / 0;"), "Ben");
        Files.writeString(folder.resolve("Cy-01-oats.handin.txt"), "my oats");
        handIn(heated("double heat = 142;"), "Dee");
        assertEquals(
                """
                1 of 4: Ada-01-oats.handin.txt: Ada, Toasted oats
                  Toast: 2 of 2 snippets ran, 2 of 2 check lines passed; done
                    prediction: “How hot?”: 140; right: 140 (right)
                  Eat: 1 of 1 snippet ran, 0 of 1 check line passed
                    ready, expected 180 within 0, got 140 (nothing was changed in this step,
                    only above it)
                2 of 4: Ben-01-oats.handin.txt: Ben, Toasted oats
                  Toast: 0 of 2 snippets ran, 0 of 2 check lines passed
                    prediction: “How hot?”: no answer; right: 140
                    snippet 1, line 2: A whole number was divided by zero. Check the divisor
                    first.
                    snippet 2, line 1: Cannot find symbol `heat` because snippet 1 of “Toast”
                    failed
                    heat, expected 140 within 5, got Cannot find symbol `heat` because snippet 1
                    of “Toast” failed
                    bakeMinutes > 10, expected true or false, got Cannot find symbol
                    `bakeMinutes` because snippet 2 of “Toast” failed
                  Eat: 0 of 1 snippet ran, 0 of 1 check line passed
                    snippet 1, line 1: Cannot find symbol `heat` because snippet 1 of “Toast”
                    failed
                    ready, expected 180 within 0, got Cannot find symbol `ready` because snippet
                    1 of “Eat” failed (nothing was changed in this step, only above it)
                3 of 4: Cy-01-oats.handin.txt
                  line 1: the first line is "my oats"; it must be "Coldwright hand-in 1"
                4 of 4: Dee-01-oats.handin.txt: Dee, Toasted oats
                  Toast: 2 of 2 snippets ran, 2 of 2 check lines passed
                    prediction: “How hot?”: no answer; right: 140
                  Eat: 1 of 1 snippet ran, 0 of 1 check line passed
                    ready, expected 180 within 0, got 142 (nothing was changed in this step,
                    only above it)

                learner  lesson                 exercises  predictions  worth a look
                Ada      01-oats                0 of 0     1 of 1
                Ben      01-oats                0 of 0     0 of 1       5: Toast: snippet 1, li…
                ?        Cy-01-oats.handin.txt  -          -            1: line 1: the first li…
                Dee      01-oats                0 of 0     0 of 1
                exercises: solved, of those in the lesson. predictions: made before the run.
                worth a look: how many things, and the first. Everything else is above or in the
                table for a spreadsheet.

                4 hand-ins: failures in 4
                """,
                said(ExitCode.FAILED, LessonFolder.in(lessons)));
    }

    private static final String EXERCISE =
            """
            # Oats

            ## Look

            ```forecast
            How hot?
            number: 140 °C within 5
            ```

            ```java
            double heat = 140;
            ```

            ```check
            heat is 140 within 1
            heat > 100 is true
            heat < 200 is true
            ```

            ```question
            What browns?
            - * oats
            - water
            ```

            ## Your turn

            ```java
            double mine = 0;
            ```

            ```java solution
            double mine = 150;
            ```

            ```check
            mine >= 140 && mine <= 160 is true -- brown: 140 to 160 °C
            ```
            """;

    private String marked(String... codes) throws IOException {
        Path lessons = Files.createDirectory(folder.resolve("lessons"));
        Files.writeString(lessons.resolve("01-oats.md"), EXERCISE);
        Lesson lesson = LessonReader.read("01-oats.md", EXERCISE);
        ContentHash from = ContentHash.of("double mine = 0;");
        for (int i = 0; i < codes.length; i++) {
            LessonWork work =
                    LessonWork.empty(
                                    LessonKey.ofCourse("01-oats"),
                                    "01-oats.md",
                                    "Oats",
                                    ContentHash.of(EXERCISE))
                            .withSnippet("Your turn", new SnippetEdit(0, codes[i], from));
            HandIn handIn = HandIn.of(work, "N" + i, lesson, Instant.EPOCH);
            Files.writeString(folder.resolve(handIn.fileName()), handIn.text());
        }
        return said(ExitCode.FAILED, LessonFolder.in(lessons));
    }

    /** The author's own checks pass in each of these; only the exercise tells them apart. */
    @Test
    void aMarkIsTheExercise() throws IOException {
        String said = marked("double mine = 150;", "double mine = 170;", "double mine = 0;");
        assertTrue(said.contains("N0       01-oats  1 of 1     0 of 1\n"), said);
        assertTrue(
                said.contains("N1       01-oats  0 of 1     0 of 1       1: Your turn: not"), said);
        assertTrue(said.contains("N2       01-oats  0 of 1     0 of 1 "), said);
        String rule = "not yet: brown: 140 to 160 °C: mine >= 140 && mine <= 160 (mine is 170)";
        assertTrue(said.replaceAll("\\s+", " ").contains(rule), said);
        assertFalse(said.contains("expected true"), said);
        assertTrue(said.contains("question: “What browns?”"), said);
    }

    @Test
    void aLessonThatAsksForAFileFindsItBesideTheHandIns() throws IOException {
        String text =
                "# Log\n\n<!--\nasks: read oven.csv\n-->\n\n## Read\n\n```java\nint size = oven.length();\n```\n\n```check\nsize is 5 within 0\n```\n";
        Path file = Files.writeString(folder.resolve("log.md"), text);
        Path asked = Files.writeString(folder.resolve("oven.csv"), "20,80");
        LessonWork work =
                LessonWork.empty(LessonKey.ofCourse("log"), "log.md", "Log", ContentHash.of(text));
        HandIn handIn = HandIn.of(work, "Ada", LessonReader.read(file), Instant.EPOCH);
        Files.writeString(folder.resolve(handIn.fileName()), handIn.text());
        LessonFolder none = LessonFolder.in(folder.resolve("none"));
        String good = said(ExitCode.DONE, none);
        assertTrue(good.contains("Read: 1 of 1 snippet ran, 1 of 1 check line passed"), good);
        Files.delete(asked);
        String lost = said(ExitCode.DONE, none).replaceAll("\\s+", " ");
        assertTrue(lost.contains("the lesson here has an error, which may not be"), lost);
        assertTrue(lost.contains("\"oven.csv\": there is no such file"), lost);
    }

    @Test
    void whatABusyMachineDidNotRunIsNotMarked() {
        MarkedHandIn busy =
                new MarkedHandIn(
                        "a.handin.txt",
                        "Ada",
                        "01-oats",
                        "Oats",
                        "",
                        List.of(),
                        List.of("busy"),
                        true,
                        true);
        assertFalse(busy.passes());
        String row = MarkTable.lines(List.of(busy), 80).get(2);
        assertTrue(row.matches("Ada +01-oats +- +- +1: busy"), row);
    }

    @Test
    void anotherTextOfTheLessonIsSaidAndAMissingLessonToo() throws IOException {
        handIn(work(), "Ada");
        LessonFolder none = LessonFolder.in(folder.resolve("none"));
        assertTrue(
                said(ExitCode.FAILED, none)
                        .startsWith(
                                "1 of 1: Ada-01-oats.handin.txt: Ada\n  there is no lesson 01-oats.md in the course or beside the hand-in. Put its"));
        Files.writeString(folder.resolve("01-oats.md"), TEXT + "\nMore.\n");
        assertTrue(
                said(ExitCode.FAILED, none)
                        .contains("  01-oats.md here is another version than the learner's."));
    }

    @Test
    void whatIsNoHandInIsNotUnderstood() {
        assertFalse(HandInFiles.areMeantBy(folder.toString()));
        assertFalse(HandInFiles.areMeantBy("01-oats"));
        assertTrue(HandInFiles.areMeantBy("ada-01-oats.handin.txt"));
        TypedSession typedSession = TypedSession.nobody();
        ClassMarking checks = checks(typedSession, LessonFolder.in(folder));
        assertEquals(ExitCode.NOT_UNDERSTOOD, checks.check(List.of("a.handin.txt", "01-oats")));
    }
}
