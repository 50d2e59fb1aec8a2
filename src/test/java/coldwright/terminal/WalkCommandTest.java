package coldwright.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.terminal.console.ExitCode;
import coldwright.workbook.DataFolder;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A lesson walked in the terminal; the benches here are real. */
class WalkCommandTest {
    @TempDir Path folder;

    @Test
    void showsEverythingInOrder() throws IOException {
        TypedSession typedSession = TypedSession.somebody();
        Path figures = folder.resolve("new/figures");
        assertEquals(
                ExitCode.DONE,
                typedSession.obey("walk", "--all", "-o", figures.toString(), "warm"));
        String expected =
                """
                Warm oats
                =========

                Grain; 5 minutes.

                Oats are toasted at 180 °C.

                1 of 2. How many grams
                ----------------------

                (A line of Java is given and runs first.)

                What do you predict? How many grams of oats go into the oven?

                    int grams = trays * 150;
                    System.out.println("toasting " + grams + " g");
                    show(Figure.of("Oats on trays").x("trays", "").y("oats", "g").line("oats", 0, 4, n -> n * 150));
                    grams / 2.0

                toasting 300 g
                result: 150

                FIGURE
                    F/01-oats-on-trays.svg
                    F/01-oats-on-trays.png

                The answer: 300 g, within 20.

                Two trays of 150 g.

                Checked: all 2 lines passed.

                2 of 2. How long
                ----------------

                What do you predict? How long do they toast?
                  a  an hour
                  b  ten minutes
                  c  a day

                    double minutes = 10;

                The answer: ten minutes.

                Longer, and they burn.

                Checked: 1 line passed.

                """;
        String shown =
                typedSession
                        .out()
                        .replace(figures.toString().replace('\\', '/'), "F")
                        .replaceAll("(?s)Figure\\. Oats on trays.*?\n    F", "FIGURE\n    F");
        assertEquals(expected, shown);
        assertEquals("", typedSession.err());
        try (Stream<Path> files = Files.list(figures)) {
            assertEquals(
                    List.of("01-oats-on-trays.png", "01-oats-on-trays.svg"),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void asksAndComparesAndWaits() {
        TypedSession typedSession = TypedSession.somebody("", "310", "", "a");
        assertEquals(ExitCode.DONE, typedSession.obey("walk", "1", "-o", folder.toString()));
        assertTrue(
                typedSession
                        .out()
                        .contains("\nYour prediction was right: 310 g. The answer: 300 g"),
                typedSession.out());
        assertTrue(
                typedSession
                        .out()
                        .contains("\nYour prediction: an hour. The answer: ten minutes.\n"),
                typedSession.out());
    }

    /** A lesson whose every sentence is too long for a narrow terminal. */
    private static final String LONG =
            """
            # A lesson with a title that is far too long for a narrow terminal to hold on one line

            ## A step whose title is just as long as that, for somebody liked to write long titles

            ```forecast
            How does the share of water that is ice fall, from the deepest cold to the first thaw?
            curve: temperature at the middle of the tub -25 to 0 °C; ice as a share of the water 0 to 100 %

            First slowly, then at once.
            ```

            ```java
            System.out.println("  a remark " + "that goes on ".repeat(12));
            List.of("one long value", "that is made of", "many words in a", "row, more than any", "terminal shows")
            ```

            ```check
            List.of("one long value", "that is made of", "many words in a", "row, more than any").size() is 5 within 0
            ```

            ## Two

            ```forecast
            Why?
            - because sugar leaves less and less room for the ice that is to grow from the water
            - * because the syrup between the crystals has to grow stronger and stronger to stay a liquid

            So it is.
            ```

            ```java
            2 + 2
            ```
            """;

    @ParameterizedTest
    @ValueSource(ints = {40, 60, 80, 100})
    void setsAllButProgramsToTheWidth(int width) throws IOException {
        Path file = Files.writeString(folder.resolve("long.md"), LONG);
        DataFolder data = TypedSession.data();
        TypedSession first = TypedSession.at(width, "", "?", "nonsense", "-20 80; -5 50", "", "b");
        first.obey(data, "walk", "--trust", file.toString());
        TypedSession second = TypedSession.at(width, "");
        second.obey(data, "walk", "--trust", file.toString());
        for (TypedSession typedSession : List.of(first, second)) {
            assertEquals(
                    List.of(),
                    typedSession
                            .out()
                            .lines()
                            .filter(line -> line.length() > width)
                            .filter(line -> !line.matches(" {4}(List|System)\\..*"))
                            .toList());
        }
        String words = first.out().replaceAll("\\s+", " ");
        assertTrue(
                words.contains(
                        "Your answer (points of the curve: temperature at the middle of the tub in"
                                + " °C, then ice as a share of the water in %, such as −19 50; −12"
                                + " 50; Enter to skip, ? for help): "),
                first.out());
        assertTrue(
                words.contains("\"nonsense\" is not one to 20 points. Type them as:"), first.out());
        assertTrue(words.contains("Your prediction: at −20 °C 80 %, at −5 °C 50 %."), first.out());
        assertTrue(words.contains("row, more than any\").size(), expected 5"), first.out());
        assertTrue(second.out().startsWith("A lesson with"), second.out());
        assertTrue(
                second.out()
                        .replaceAll("\\s+", " ")
                        .contains("Press Enter to continue there, or type b"),
                second.out());
    }

    @Test
    void whatIsFoldedGoesOnUnderItsBegin() throws IOException {
        Path file = Files.writeString(folder.resolve("long.md"), LONG);
        TypedSession typedSession = TypedSession.at(60);
        typedSession.obey("walk", "--trust", "--all", file.toString());
        assertTrue(
                typedSession
                        .out()
                        .contains(
                                """
                                  a  because sugar leaves less and less room for the ice
                                     that is to grow from the water
                                """),
                typedSession.out());
        assertTrue(
                typedSession
                        .out()
                        .contains(
                                "\n  a remark that goes on that goes on that goes on that goes\n"
                                        + "  on that goes on"),
                typedSession.out());
    }

    @Test
    void stopsWhenAskedTo() {
        TypedSession typedSession = TypedSession.somebody("", "", "q");
        assertEquals(ExitCode.DONE, typedSession.obey("walk", "1", "-o", folder.toString()));
        assertTrue(typedSession.out().contains("1 of 2."));
        assertFalse(typedSession.out().contains("2 of 2."));
    }

    @Test
    void saysOfWhatIsNoWayOnThatItIsNone() {
        TypedSession typedSession = TypedSession.somebody("", "", "z", "-12", "Q");
        assertEquals(ExitCode.DONE, typedSession.obey("walk", "1", "-o", folder.toString()));
        for (String wrong : List.of("z", "-12")) {
            assertTrue(
                    typedSession
                            .out()
                            .contains(
                                    "\n\"%s\" isn't an option here. Press Enter to continue, or type q or ?.\n"
                                            .formatted(wrong)),
                    typedSession.out());
        }
        assertFalse(typedSession.out().contains("2 of 2."));
    }

    @Test
    void figuresGoToATemporaryFolderOtherwise() {
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.DONE, typedSession.obey("walk", "1"));
        Matcher path =
                Pattern.compile("    (\\S+/01-oats-on-trays\\.svg)").matcher(typedSession.out());
        assertTrue(path.find(), typedSession.out());
        Path file = Path.of(path.group(1));
        assertTrue(Files.exists(file));
        assertTrue(
                file.getParent().getFileName().toString().startsWith("coldwright-01-warm-oats-"));
    }

    @Test
    void aFailingSnippetIsSaidAndTheWalkGoesOn() {
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.FAILED, typedSession.obey("walk", "2"));
        assertTrue(
                typedSession
                        .out()
                        .contains(
                                "Line 1: A whole number was divided by zero. Check the divisor first.\n"),
                typedSession.out());
        assertTrue(
                typedSession.out().contains("Checked: 1 of 7 check lines passed.\n"),
                typedSession.out());
        assertTrue(
                typedSession.out().contains("    heat, expected 180 within 5, got 200\n"),
                typedSession.out());
    }

    @Test
    void anExerciseIsShownAsTheLearnerFindsIt() {
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.DONE, typedSession.obey("walk", "4"));
        assertTrue(
                typedSession.out().contains("    sum, expected 30 within 0, got 10\n"),
                typedSession.out());
        assertFalse(typedSession.out().contains("malt = 20"), typedSession.out());
    }

    @Test
    void faultsAreSaidFirstAndTheRestIsWalked() throws IOException {
        Path file = folder.resolve("faulty.md");
        Files.writeString(file, "## s\n\nWords.\n\n```jaav\nint a;\n```\n");
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.DONE, typedSession.obey("walk", "--trust", file.toString()));
        assertEquals(
                """
                The lesson has 2 errors:
                F:1: the lesson has no title; begin it with a line such as `# Sugar and ice`
                F:5: "jaav" isn't a kind of block: did you mean `java`?
                """,
                typedSession.err().replace(file.toString(), "F"));
        assertTrue(typedSession.out().endsWith("Words.\n\n    int a;\n\n"), typedSession.out());
    }

    @Test
    void aLessonThatCannotBeReadIsSaid() throws IOException {
        Path file = Files.createFile(folder.resolve("empty.md"));
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.FAILED, typedSession.obey("walk", file.toString()));
        assertTrue(
                typedSession.err().contains("empty.md:1: the file is empty; begin it with"),
                typedSession.err());
        assertEquals(1, typedSession.err().lines().count());
    }

    @Test
    void aFolderForFiguresThatIsAFileIsSaid() throws IOException {
        Path file = Files.createFile(folder.resolve("figures"));
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(
                ExitCode.NOT_UNDERSTOOD, typedSession.obey("walk", "1", "-o", file.toString()));
        assertTrue(
                typedSession
                        .err()
                        .endsWith("/figures is a file. Name a folder for the figures, or none.\n"),
                typedSession.err());
    }

    @Test
    void notesForTheTeacherAreShownToTheTeacherAlone() throws IOException {
        Path file = folder.resolve("notes.md");
        Files.writeString(
                file, "# t\n## s\nWords.\n```teacher\nTen *minutes*.\n\n- Ask.\n```\nMore.\n");
        TypedSession pupil = TypedSession.nobody();
        assertEquals(ExitCode.DONE, pupil.obey("walk", "--trust", file.toString()));
        assertTrue(pupil.out().endsWith("Words.\n\nMore.\n\n"), pupil.out());
        TypedSession teacher = TypedSession.nobody();
        assertEquals(ExitCode.DONE, teacher.obey("walk", "--teacher", "--trust", file.toString()));
        assertTrue(
                teacher.out()
                        .endsWith(
                                "Words.\n\nFor the teacher:\n  | Ten minutes.\n  |\n  |   • Ask.\n\nMore.\n\n"),
                teacher.out());
    }

    @Test
    void aLessonRunsConfinedAndItsReaderIsAskedOnlyIfItGoesBeyond() throws IOException {
        Path plain = folder.resolve("plain.md");
        Files.writeString(plain, "# Plain\n\n## One\n\n```java\nSystem.out.println(6 * 7);\n```\n");
        TypedSession reader = TypedSession.somebody("", "");
        assertEquals(ExitCode.DONE, reader.obey("walk", plain.toString()));
        assertTrue(reader.out().contains("\n42\n"), reader.out());

        Path file = folder.resolve("theirs.md");
        Files.writeString(
                file,
                "# Theirs\n\n## One\n\n```java\nSystem.out.println(new java.io.File(\"a\").getName().length() + 41);\n```\n");
        TypedSession alone = TypedSession.somebody();
        assertEquals(ExitCode.FAILED, alone.obey("walk", "--all", file.toString()));
        assertTrue(alone.out().contains("Lessons can’t read or write files"), alone.out());
        TypedSession unwilling = TypedSession.somebody("", "no", "");
        assertEquals(ExitCode.FAILED, unwilling.obey("walk", file.toString()));
        assertFalse(unwilling.out().contains("\n42\n"), unwilling.out());
        TypedSession willing = TypedSession.somebody("", "yes", "");
        assertEquals(ExitCode.DONE, willing.obey("walk", file.toString()));
        assertTrue(willing.out().contains("\n42\n"), willing.out());
    }
}
