package coldwright.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.lesson.LessonShelf;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

class TerminalTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "wlak 1|\"wlak\" is no command: did you mean \"walk\"?|help",
                "frobnicate|\"frobnicate\" is no command|help",
                "mine.md|mine.md: there is no such file; look at its name and folder|help",
                "pack.zip|pack.zip: there is no such file; look at its name and folder|help",
                "--halp|\"--halp\" is no option: did you mean \"--help\"?|help",
                "walk|\"walk\" needs LESSON|help walk",
                "walk 1 2|\"2\" is one word too many|help walk",
                "walk 1 --al|\"--al\" is no option: did you mean \"--all\"?|help walk",
                "check|\"check\" needs LESSON|help check",
                "check 1 --seconds x|\"x\" does not fit --seconds, which takes a number or a path|help check",
                "walk 1 -o|\"walk\" needs FOLDER|help walk",
            })
    void whatIsNotUnderstoodIsSaidInASentence(String words, String sentence, String help) {
        Typed typed = Typed.nobody();
        assertEquals(Exit.NOT_UNDERSTOOD, typed.obey(words.split(" ")));
        assertEquals("", typed.out());
        assertEquals(sentence + "\n\"" + help + "\" says what can be written here.\n", typed.err());
    }

    @Test
    void anUnknownLessonIsSaidWithTheNearest() {
        Typed typed = Typed.nobody();
        assertEquals(Exit.NOT_UNDERSTOOD, typed.obey("walk", "burned-oats"));
        assertEquals(
                "there is no lesson \"burned-oats\": did you mean \"02-burnt-oats\"?\n",
                typed.err());
    }

    @Test
    void secondsHaveARange() {
        Typed typed = Typed.nobody();
        assertEquals(Exit.NOT_UNDERSTOOD, typed.obey("check", "--seconds", "0", "1"));
        assertEquals("--seconds is 0; it must be between 1 and 3600\n", typed.err());
    }

    @ParameterizedTest
    @CsvSource({"help", "--help", "-h", "help walk", "walk --help", "help check", "check -h"})
    void helpIsGivenAndIsNoFailure(String words) {
        Typed typed = Typed.nobody();
        assertEquals(Exit.DONE, typed.obey(words.split(" ")));
        assertEquals("", typed.err());
        assertTrue(typed.out().contains("Usage") || typed.out().contains("Commands:"), typed.out());
        assertTrue(typed.out().lines().allMatch(line -> line.length() <= 80), typed.out());
    }

    @Test
    void helpNamesEveryCommand() {
        Typed typed = Typed.nobody();
        typed.obey("help");
        assertTrue(typed.out().contains("\n  walk "), typed.out());
        assertTrue(typed.out().contains("\n  check "), typed.out());
    }

    @Test
    void theVersionNamesTheJava() {
        Typed typed = Typed.nobody();
        assertEquals(Exit.DONE, typed.obey("--version"));
        assertTrue(
                typed.out()
                        .matches(
                                "Coldwright \\S.*, on Java "
                                        + System.getProperty("java.version")
                                        + "\n"),
                typed.out());
    }

    @Test
    void anAtSignIsNoFile() {
        Typed typed = Typed.nobody();
        assertEquals(Exit.NOT_UNDERSTOOD, typed.obey("walk", "@pom.xml"));
        assertTrue(typed.err().startsWith("there is no lesson \"@pom.xml\""), typed.err());
    }

    @Test
    void aFaultOfTheProgramsOwnIsOneSentenceAndAFile() throws IOException {
        Typed typed = Typed.nobody();
        Screen broken = new Screen(new Broken(), typed.screen().err(), Optional.empty(), 80);
        int exit =
                new Terminal(broken, LessonShelf.in(Typed.LESSONS), Typed.data()).obey("walk", "1");
        assertEquals(Exit.OWN_FAULT, exit);
        assertEquals(1, typed.err().lines().count(), typed.err());
        String start =
                "Coldwright has a fault of its own (UnsupportedOperationException); please report it with the file ";
        assertTrue(typed.err().startsWith(start), typed.err());
        Path log = Path.of(typed.err().strip().substring(start.length()));
        assertTrue(Files.readString(log, StandardCharsets.UTF_8).contains("Broken.println"));
    }

    private static final class Broken extends PrintStream {
        Broken() {
            super(nullOutputStream(), false, StandardCharsets.UTF_8);
        }

        @Override
        public void println(String words) {
            throw new UnsupportedOperationException("broken on purpose");
        }
    }

    @Test
    void withoutAWindowTheFirstLessonIsWalked() {
        Typed typed = Typed.somebody("q");
        Terminal terminal =
                new Terminal(typed.screen(), LessonShelf.in(Typed.LESSONS), Typed.data());
        assertEquals(Exit.DONE, terminal.insteadOfWindow("No window: no display."));
        assertTrue(
                typed.out().startsWith("No window: no display.\nWarm oats\n========="),
                typed.out());
        assertTrue(typed.out().contains("2 of 2. How long"), typed.out());
    }

    @Test
    void withoutAWindowAndLessonsThatIsSaid() {
        Typed typed = Typed.nobody();
        Terminal terminal =
                new Terminal(typed.screen(), LessonShelf.in(Path.of("none")), Typed.data());
        assertEquals(Exit.FAILED, terminal.insteadOfWindow("No window: no display."));
        assertEquals(
                "This program came without lessons; give it a lesson file: walk LESSON.\n",
                typed.err());
    }

    @Test
    void nothingThatATerminalWouldObeyGetsThrough() {
        Typed typed = Typed.nobody();
        typed.screen().say("a\u001b[31mb\u0007\tc\nd\u009b");
        assertEquals("a[31mb\tc\nd\n", typed.out());
        assertFalse(typed.screen().gone());
    }

    @Test
    void aBatchBecomesASheetForTheKitchen(@TempDir Path at) throws IOException {
        Path file =
                Files.writeString(
                        at.resolve("sorbet.batch"),
                        "ingredient,grams\nblood orange juice,600\nsucrose,150\n");
        Path html = at.resolve("sheet.html");
        Typed typed = Typed.nobody();
        assertEquals(
                Exit.DONE,
                typed.obey("batch", file.toString(), "--sheet", html.toString()),
                typed.err());
        assertEquals(true, Files.readString(html).contains("<h2>Cautions</h2>"));
        String wrong = at.resolve("sheet.doc").toString();
        assertEquals(Exit.NOT_UNDERSTOOD, typed.obey("batch", file.toString(), "--sheet", wrong));
        assertEquals(true, typed.err().contains("its name must end in .pdf or .html"), typed.err());
    }
}
