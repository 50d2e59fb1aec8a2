package coldwright.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
        Typed typed = Typed.somebody();
        Path figures = folder.resolve("new/figures");
        assertEquals(Exit.DONE, typed.obey("walk", "--all", "-o", figures.toString(), "warm"));
        String expected =
                """
                Warm oats
                =========

                Grain; 5 minutes.

                Oats are toasted at 180 °C.

                1 of 2. How many grams
                ----------------------

                (A line of Java is given and runs first.)

                What do you expect? How many grams of oats go into the oven?

                    int grams = trays * 150;
                    System.out.println("toasting " + grams + " g");
                    show(Figure.of("Oats on trays").x("trays", "").y("oats", "g").line("oats", 0, 4, n -> n * 150));
                    grams / 2.0

                toasting 300 g
                gives 150

                FIGURE
                    F/01-oats-on-trays.svg
                    F/01-oats-on-trays.png

                The answer: 300 g; within 20 counts as right.

                Two trays of 150 g.

                Checked: both lines hold.

                2 of 2. How long
                ----------------

                What do you expect? How long do they toast?
                  a  an hour
                  b  ten minutes
                  c  a day

                    double minutes = 10;

                The answer: ten minutes.

                Longer, and they burn.

                Checked: 1 line holds.

                """;
        String shown =
                typed.out()
                        .replace(figures.toString().replace('\\', '/'), "F")
                        .replaceAll("(?s)Figure\\. Oats on trays.*?\n    F", "FIGURE\n    F");
        assertEquals(expected, shown);
        assertEquals("", typed.err());
        try (Stream<Path> files = Files.list(figures)) {
            assertEquals(
                    List.of("01-oats-on-trays.png", "01-oats-on-trays.svg"),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void asksAndComparesAndWaits() {
        Typed typed = Typed.somebody("", "310", "", "a");
        assertEquals(Exit.DONE, typed.obey("walk", "1", "-o", folder.toString()));
        assertTrue(
                typed.out().contains("\nYou said: 310 g. That is right. The answer: 300 g"),
                typed.out());
        assertTrue(
                typed.out().contains("\nYou said: an hour. The answer: ten minutes.\n"),
                typed.out());
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
        DataFolder data = Typed.data();
        Typed first = Typed.at(width, "", "?", "nonsense", "-20 80; -5 50", "", "b");
        first.obey(data, "walk", "--trust", file.toString());
        Typed second = Typed.at(width, "");
        second.obey(data, "walk", "--trust", file.toString());
        for (Typed typed : List.of(first, second)) {
            assertEquals(
                    List.of(),
                    typed.out()
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
                                + " 50; Enter to leave it out, ? for help): "),
                first.out());
        assertTrue(
                words.contains("\"nonsense\" is not one to 20 points; type them as:"), first.out());
        assertTrue(words.contains("You said: at −20 °C 80 %, at −5 °C 50 %."), first.out());
        assertTrue(words.contains("row, more than any\").size(), expected 5"), first.out());
        assertTrue(second.out().startsWith("A lesson with"), second.out());
        assertTrue(
                second.out().replaceAll("\\s+", " ").contains("Enter to go on there, b to begin"),
                second.out());
    }

    @Test
    void whatIsFoldedGoesOnUnderItsBegin() throws IOException {
        Path file = Files.writeString(folder.resolve("long.md"), LONG);
        Typed typed = Typed.at(60);
        typed.obey("walk", "--trust", "--all", file.toString());
        assertTrue(
                typed.out()
                        .contains(
                                """
                                  a  because sugar leaves less and less room for the ice
                                     that is to grow from the water
                                """),
                typed.out());
        assertTrue(
                typed.out()
                        .contains(
                                "\n  a remark that goes on that goes on that goes on that goes\n"
                                        + "  on that goes on"),
                typed.out());
    }

    @Test
    void stopsWhenAskedTo() {
        Typed typed = Typed.somebody("", "", "q");
        assertEquals(Exit.DONE, typed.obey("walk", "1", "-o", folder.toString()));
        assertTrue(typed.out().contains("1 of 2."));
        assertFalse(typed.out().contains("2 of 2."));
    }

    @Test
    void saysOfWhatIsNoWayOnThatItIsNone() {
        Typed typed = Typed.somebody("", "", "z", "-12", "Q");
        assertEquals(Exit.DONE, typed.obey("walk", "1", "-o", folder.toString()));
        for (String wrong : List.of("z", "-12")) {
            assertTrue(
                    typed.out()
                            .contains(
                                    "\n\"%s\" means nothing here: press Enter alone to go on, or type q or ?.\n"
                                            .formatted(wrong)),
                    typed.out());
        }
        assertFalse(typed.out().contains("2 of 2."));
    }

    @Test
    void figuresGoToATemporaryFolderOtherwise() {
        Typed typed = Typed.nobody();
        assertEquals(Exit.DONE, typed.obey("walk", "1"));
        Matcher path = Pattern.compile("    (\\S+/01-oats-on-trays\\.svg)").matcher(typed.out());
        assertTrue(path.find(), typed.out());
        Path file = Path.of(path.group(1));
        assertTrue(Files.exists(file));
        assertTrue(
                file.getParent().getFileName().toString().startsWith("coldwright-01-warm-oats-"));
    }

    @Test
    void aFailingSnippetIsSaidAndTheWalkGoesOn() {
        Typed typed = Typed.nobody();
        assertEquals(Exit.FAILED, typed.obey("walk", "2"));
        assertTrue(
                typed.out()
                        .contains(
                                "Line 1: a whole number was divided by zero; check the divisor first\n"),
                typed.out());
        assertTrue(typed.out().contains("Checked: 1 of 7 lines hold. Not yet:\n"), typed.out());
        assertTrue(typed.out().contains("    heat, expected 180 within 5, got 200\n"), typed.out());
    }

    @Test
    void anExerciseIsShownAsTheLearnerFindsIt() {
        Typed typed = Typed.nobody();
        assertEquals(Exit.DONE, typed.obey("walk", "4"));
        assertTrue(typed.out().contains("    sum, expected 30 within 0, got 10\n"), typed.out());
        assertFalse(typed.out().contains("malt = 20"), typed.out());
    }

    @Test
    void faultsAreSaidFirstAndTheRestIsWalked() throws IOException {
        Path file = folder.resolve("faulty.md");
        Files.writeString(file, "## s\n\nWords.\n\n```jaav\nint a;\n```\n");
        Typed typed = Typed.nobody();
        assertEquals(Exit.DONE, typed.obey("walk", "--trust", file.toString()));
        assertEquals(
                """
                The lesson has 2 faults:
                F:1: the lesson has no title; begin it with a line such as `# Sugar and ice`
                F:5: "jaav" is no kind of block: did you mean `java`?
                """,
                typed.err().replace(file.toString(), "F"));
        assertTrue(typed.out().endsWith("Words.\n\n    int a;\n\n"), typed.out());
    }

    @Test
    void aLessonThatCannotBeReadIsSaid() throws IOException {
        Path file = Files.createFile(folder.resolve("empty.md"));
        Typed typed = Typed.nobody();
        assertEquals(Exit.FAILED, typed.obey("walk", file.toString()));
        assertTrue(
                typed.err().contains("empty.md:1: the file is empty; begin it with"), typed.err());
        assertEquals(1, typed.err().lines().count());
    }

    @Test
    void aFolderForFiguresThatIsAFileIsSaid() throws IOException {
        Path file = Files.createFile(folder.resolve("figures"));
        Typed typed = Typed.nobody();
        assertEquals(Exit.NOT_UNDERSTOOD, typed.obey("walk", "1", "-o", file.toString()));
        assertTrue(
                typed.err()
                        .endsWith("/figures is a file; give a folder for the figures, or none\n"),
                typed.err());
    }

    @Test
    void notesForTheTeacherAreShownToTheTeacherAlone() throws IOException {
        Path file = folder.resolve("notes.md");
        Files.writeString(
                file, "# t\n## s\nWords.\n```teacher\nTen *minutes*.\n\n- Ask.\n```\nMore.\n");
        Typed pupil = Typed.nobody();
        assertEquals(Exit.DONE, pupil.obey("walk", "--trust", file.toString()));
        assertTrue(pupil.out().endsWith("Words.\n\nMore.\n\n"), pupil.out());
        Typed teacher = Typed.nobody();
        assertEquals(Exit.DONE, teacher.obey("walk", "--teacher", "--trust", file.toString()));
        assertTrue(
                teacher.out()
                        .endsWith(
                                "Words.\n\nFor the teacher:\n  | Ten minutes.\n  |\n  |   • Ask.\n\nMore.\n\n"),
                teacher.out());
    }

    @Test
    void aStrangersLessonRunsNothingUnlessSomebodyAgrees() throws IOException {
        Path file = folder.resolve("theirs.md");
        Files.writeString(file, "# Theirs\n\n## One\n\n```java\nSystem.out.println(6 * 7);\n```\n");
        Typed alone = Typed.somebody();
        assertEquals(Exit.FAILED, alone.obey("walk", "--all", file.toString()));
        assertFalse(alone.out().contains("\n42\n"), alone.out());
        Typed unwilling = Typed.somebody("no");
        assertEquals(Exit.FAILED, unwilling.obey("walk", file.toString()));
        assertFalse(unwilling.out().contains("\n42\n"), unwilling.out());
        Typed willing = Typed.somebody("yes", "", "", "");
        assertEquals(Exit.DONE, willing.obey("walk", file.toString()));
        assertTrue(willing.out().contains("\n42\n"), willing.out());
    }
}
