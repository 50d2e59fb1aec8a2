package coldwright.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.terminal.console.ExitCode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Every failure of a lesson gets its line; the benches here are real. */
class CheckCommandTest {
    private static final String BURNT = TypedSession.LESSONS + "/02-burnt-oats.md";

    @TempDir Path folder;

    @Test
    void aSoundLessonHolds() {
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.DONE, typedSession.obey("check", "1"));
        assertEquals(
                "1 lesson, 3 snippets, 3 check lines: all passed\n"
                        + "3 of 3 check lines passed, 0 of them with a published source\n",
                typedSession.out());
        assertEquals("", typedSession.err());
    }

    @Test
    void eachFailureHasFileLineWhatExpectedAndGot() {
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.FAILED, typedSession.obey("check", BURNT));
        String expected =
                """
                F:10: snippet, expected to run to its end, got: A whole number was divided by zero. Check the divisor first.
                F:14: snippet, expected to run to its end, got: Cannot find symbol `unknownThing`. Is it spelled right and declared above?
                F:18: heat, expected 180 within 5, got 200
                F:19: not yet: it smells so: heat > 300 (heat is 200)
                F:21: soot, expected 1 within 1, got Cannot find symbol `soot`. Is it spelled right and declared above?
                F:22: "black" + heat, expected 3 within 1, got black200, of type String
                F:23: heat, expected true or false, got 200, of type int
                F:24: List.of(1).get(7), expected 1 within 1, got This failed with IndexOutOfBoundsException: Index: 7 Size: 1
                1 lesson, 3 snippets, 7 check lines: 8 failures
                1 of 7 check lines passed, 0 of them with a published source
                """;
        assertEquals(expected, typedSession.out().replace(BURNT, "F"));
    }

    @Test
    void anEndlessLoopIsStoppedAndTheRestGoesOn() {
        TypedSession typedSession = TypedSession.nobody();
        String file = TypedSession.LESSONS + "/03-endless-oats.md";
        assertEquals(ExitCode.FAILED, typedSession.obey("check", "--seconds", "5", file));
        assertEquals(
                """
                F:5: snippet, expected to run to its end, got: the snippet did not end within 5 seconds and was stopped. Look for a loop without an end.
                1 lesson, 2 snippets, 1 check line: 1 failure
                1 of 1 check line passed, 0 of them with a published source
                """,
                typedSession.out().replace(file, "F"));
    }

    @Test
    void aSolutionStandsInForAnExerciseUntilItsStepEnds() {
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.DONE, typedSession.obey("check", "exercise"), typedSession.out());
    }

    @Test
    void faultsOfTheTextCountAndTheRestIsChecked() throws IOException {
        Path file = folder.resolve("faulty.md");
        Files.writeString(
                file,
                "# t\n## s\n```java\nint a = 1; // dial 5 to 9 step 1\n```\n```check\na is 2 within 0\n```\n");
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.FAILED, typedSession.obey("check", file.toString()));
        assertEquals(
                """
                F:4: the dial of `a` starts at 1, outside its range 5 to 9; change the number or the range
                F:7: a, expected 2 within 0, got 1
                1 lesson, 1 snippet, 1 check line: 2 failures
                0 of 1 check line passed, 0 of them with a published source
                """,
                typedSession.out().replace(file.toString(), "F"));
    }

    @Test
    void aFolderIsCheckedInTheOrderOfItsNames() throws IOException {
        for (String name : new String[] {"b", "a", "c"}) {
            Files.writeString(
                    folder.resolve(name + ".md"),
                    "# t\n## s\n```java\nint a = 1;\n```\n```check\na is 2 within 0\n```\n");
        }
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.FAILED, typedSession.obey("check", folder.toString()));
        assertEquals(
                """
                F/a.md:7: a, expected 2 within 0, got 1
                F/b.md:7: a, expected 2 within 0, got 1
                F/c.md:7: a, expected 2 within 0, got 1
                3 lessons, 3 snippets, 3 check lines: 3 failures
                0 of 3 check lines passed, 0 of them with a published source
                """,
                typedSession.out().replace(folder.toString(), "F"));
    }

    @Test
    void whatIsNoLessonIsSaidAndNothingRuns() {
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(
                ExitCode.NOT_UNDERSTOOD,
                typedSession.obey("check", "1", "warmoats", "nothing/here.md"));
        assertEquals(
                "there is no lesson \"warmoats\": did you mean \"01-warm-oats\"?\n",
                typedSession.err());
        assertEquals("", typedSession.out());
    }

    @Test
    void theExampleOfTheDocumentationHolds() throws IOException {
        String document = Files.readString(Path.of("docs/lesson-format.md"));
        String fence = "````";
        int start = document.indexOf('\n', document.indexOf(fence)) + 1;
        Path example = folder.resolve("example.md");
        Files.writeString(example, document.substring(start, document.indexOf(fence, start)));
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(
                ExitCode.DONE, typedSession.obey("check", example.toString()), typedSession.out());
        assertEquals(
                "1 lesson, 1 snippet, 1 check line, 1 verified number: all passed\n"
                        + "1 of 1 check line passed, 1 of them with a published source\n",
                typedSession.out());
    }

    @Test
    void thePageOfNamesHolds() {
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(
                ExitCode.DONE, typedSession.obey("check", "docs/names.md"), typedSession.out());
        assertTrue(typedSession.out().contains("all passed"), typedSession.out());
    }

    @Test
    void whatHangsOnASnippetThatFailedSaysSo() throws IOException {
        Path file = folder.resolve("slip.md");
        Files.writeString(
                file,
                """
                # Slip

                ## One

                ```java
                var syrup = Mix.of(grams(70, WATER), grams(30, SUCROS));
                ```

                ```check
                syrup.massG() is 100 within 0.1
                ```
                """);
        TypedSession typedSession = TypedSession.nobody();
        typedSession.obey("check", file.toString());
        assertTrue(
                typedSession
                        .out()
                        .contains(
                                "got Cannot find symbol `syrup` because the snippet on line 5 failed"),
                typedSession.out());
    }

    @Test
    void numbersInTheTextAreHeldToTheCalculator() throws IOException {
        Path file = folder.resolve("held.md");
        Files.writeString(
                file,
                """
                # t
                ## s
                ```forecast
                How much?
                - a little
                - * much

                Just 12.5<!-- = sum / 2 --> g.
                ```
                ```java
                double sum = 25.04;
                ```
                In all 25<!-- = sum --> g, or 25.1<!-- = sum --> g, or about 20<!-- = sum within 6 --> g.
                And −3<!-- = missing --> g.
                ```check
                sum is 25 within 0.1 -- A. Baker, Oats, 1931
                ```
                ```teacher
                Some say 30<!-- = sum --> g.
                ```
                """);
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.FAILED, typedSession.obey("check", file.toString()));
        assertEquals(
                """
                F:13: the text has 25.1, the calculator gives 25.04
                F:14: the text has −3, but `missing` gives no number: Cannot find symbol `missing`. Is it spelled right and declared above?
                F:19: the text has 30, the calculator gives 25.0
                1 lesson, 1 snippet, 1 check line, 6 verified numbers: 3 failures
                1 of 1 check line passed, 1 of them with a published source
                """,
                typedSession.out().replace(file.toString(), "F"));
    }

    @Test
    void whoForgotTheNameOfTheTableIsToldThatItTakesOne() {
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.NOT_UNDERSTOOD, typedSession.obey("check", "--table", "work"));
        assertTrue(
                typedSession
                        .err()
                        .startsWith(
                                "--table is the file to write, here \"work\". Name the hand-ins after it: check --table marks.csv FOLDER\n"),
                typedSession.err());
    }

    /** So many statements take a few seconds to compile on any machine. */
    @Test
    void whatTakesTooLongToCompileIsNotCalledALoop() throws IOException {
        String many =
                IntStream.range(0, 290)
                        .mapToObj(i -> "double oats%d = %d * 2.0;\n".formatted(i, i))
                        .collect(Collectors.joining());
        Path file =
                Files.writeString(
                        folder.resolve("many.md"),
                        "# Many\n\n## One\n\n```java\n" + many + "```\n");
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(
                ExitCode.FAILED, typedSession.obey("check", "--seconds", "1", file.toString()));
        assertTrue(
                typedSession.out().contains("the snippet was not compiled within 1 seconds. Split"),
                typedSession.out());
    }

    @Test
    void anEmptyFolderIsSaid() {
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.NOT_UNDERSTOOD, typedSession.obey("check", folder.toString()));
        assertTrue(
                typedSession.err().contains(" has neither lessons (names that end in .md) nor"),
                typedSession.err());
    }
}
