package coldwright.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.lesson.LessonFolder;
import coldwright.terminal.console.ExitCode;
import coldwright.terminal.console.TerminalScreen;
import coldwright.terminal.console.WatchedOutput;
import coldwright.words.Words;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

class TerminalTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "wlak 1|\"wlak\" is unknown: did you mean \"walk\"?|help",
                "frobnicate|\"frobnicate\" isn't a command.|help",
                "mine.md|mine.md doesn't exist. Check its name and folder.|help",
                "pack.zip|pack.zip doesn't exist. Check its name and folder.|help",
                "--halp|\"--halp\" is unknown: did you mean \"--help\"?|help",
                "walk|\"walk\" needs LESSON|help walk",
                "walk 1 2|\"2\" is one word too many.|help walk",
                "walk 1 --al|\"--al\" is unknown: did you mean \"--all\"?|help walk",
                "check 1 --seconds x|\"x\" doesn't fit --seconds, which takes a number or a path.|help check",
                "walk 1 -o|\"walk\" needs FOLDER|help walk",
            })
    void whatIsNotUnderstoodIsSaidInASentence(String words, String sentence, String help) {
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.NOT_UNDERSTOOD, typedSession.obey(words.split(" ")));
        assertEquals("", typedSession.out());
        assertEquals(sentence + "\n\"" + help + "\" shows the usage.\n", typedSession.err());
    }

    @Test
    void anUnknownLessonIsSaidWithTheNearest() {
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.NOT_UNDERSTOOD, typedSession.obey("walk", "burned-oats"));
        assertEquals(
                "there is no lesson \"burned-oats\": did you mean \"02-burnt-oats\"?\n",
                typedSession.err());
    }

    @Test
    void secondsHaveARange() {
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.NOT_UNDERSTOOD, typedSession.obey("check", "--seconds", "0", "1"));
        assertEquals("--seconds is 0; it must be between 1 and 3600.\n", typedSession.err());
    }

    @ParameterizedTest
    @CsvSource({"help", "--help", "-h", "help walk", "walk --help", "help check", "check -h"})
    void helpIsGivenAndIsNoFailure(String words) {
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.DONE, typedSession.obey(words.split(" ")));
        assertEquals("", typedSession.err());
        assertTrue(
                typedSession.out().contains("Usage") || typedSession.out().contains("Commands:"),
                typedSession.out());
        assertTrue(
                typedSession.out().lines().allMatch(line -> line.length() <= 80),
                typedSession.out());
    }

    @Test
    void helpNamesEveryCommand() {
        TypedSession typedSession = TypedSession.nobody();
        typedSession.obey("help");
        assertTrue(typedSession.out().contains("\n  walk "), typedSession.out());
        assertTrue(typedSession.out().contains("\n  check "), typedSession.out());
    }

    @Test
    void theVersionNamesTheJava() {
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.DONE, typedSession.obey("--version"));
        assertTrue(
                typedSession
                        .out()
                        .matches(
                                "Coldwright \\S.*, on Java "
                                        + System.getProperty("java.version")
                                        + "\n"),
                typedSession.out());
    }

    @Test
    void anAtSignIsNoFile() {
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.NOT_UNDERSTOOD, typedSession.obey("walk", "@pom.xml"));
        assertTrue(
                typedSession.err().startsWith("there is no lesson \"@pom.xml\""),
                typedSession.err());
    }

    @Test
    void aFaultOfTheProgramsOwnIsOneSentenceAndAFile() throws IOException {
        TypedSession typedSession = TypedSession.nobody();
        TerminalScreen broken =
                new TerminalScreen(new Broken(), typedSession.screen().err(), Optional.empty(), 80);
        int exit =
                new Terminal(
                                broken,
                                LessonFolder.in(TypedSession.LESSONS),
                                TypedSession.data(),
                                SharedBenches.SHARED)
                        .execute("walk", "1");
        assertEquals(ExitCode.OWN_FAULT, exit);
        assertEquals(1, typedSession.err().lines().count(), typedSession.err());
        String start =
                "Coldwright has an error of its own (UnsupportedOperationException). Please report it with the file ";
        assertTrue(typedSession.err().startsWith(start), typedSession.err());
        Path log = Path.of(typedSession.err().strip().substring(start.length()));
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
        TypedSession typedSession = TypedSession.somebody("q");
        Terminal terminal =
                new Terminal(
                        typedSession.screen(),
                        LessonFolder.in(TypedSession.LESSONS),
                        TypedSession.data(),
                        SharedBenches.SHARED);
        assertEquals(ExitCode.DONE, terminal.insteadOfWindow("No window: no display."));
        assertTrue(
                typedSession.out().startsWith("No window: no display.\nWarm oats\n========="),
                typedSession.out());
        assertTrue(typedSession.out().contains("2 of 2. How long"), typedSession.out());
    }

    @Test
    void withoutAWindowAndLessonsThatIsSaid() {
        TypedSession typedSession = TypedSession.nobody();
        Terminal terminal =
                new Terminal(
                        typedSession.screen(),
                        LessonFolder.in(Path.of("none")),
                        TypedSession.data(),
                        SharedBenches.SHARED);
        assertEquals(ExitCode.FAILED, terminal.insteadOfWindow("No window: no display."));
        assertEquals(
                "This program came without lessons. Name a lesson file: walk LESSON\n",
                typedSession.err());
    }

    @Test
    void nothingThatATerminalWouldObeyGetsThrough() {
        TypedSession typedSession = TypedSession.nobody();
        typedSession.screen().say("a\u001b[31mb\u0007\tc\nd\u009b");
        assertEquals("a[31mb\tc\nd\n", typedSession.out());
        assertFalse(typedSession.screen().gone());
    }

    @Test
    void aBatchBecomesASheetForTheKitchen(@TempDir Path at) throws IOException {
        Path file =
                Files.writeString(
                        at.resolve("sorbet.batch"),
                        "ingredient,grams\nblood orange juice,600\nsucrose,150\n");
        Path html = at.resolve("sheet.html");
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(
                ExitCode.DONE,
                typedSession.obey("batch", file.toString(), "--sheet", html.toString()),
                typedSession.err());
        assertEquals(true, Files.readString(html).contains("<h2>Cautions</h2>"));
        String wrong = at.resolve("sheet.doc").toString();
        assertEquals(
                ExitCode.NOT_UNDERSTOOD,
                typedSession.obey("batch", file.toString(), "--sheet", wrong));
        assertEquals(
                true,
                typedSession.err().contains("Its name must end in .pdf or .html"),
                typedSession.err());
    }

    @Test
    void sourcesAreToldOnlyWhenAsked(@TempDir Path at) throws IOException {
        Path file =
                Files.writeString(
                        at.resolve("sorbet.batch"),
                        "ingredient,grams\nblood orange juice,600\nsucrose,150\n");
        TypedSession plain = TypedSession.nobody();
        assertEquals(ExitCode.DONE, plain.obey("batch", file.toString()), plain.err());
        assertTrue(plain.out().contains("(rule of thumb)"), plain.out());
        assertFalse(plain.out().contains("textbooks"), plain.out());
        TypedSession why = TypedSession.nobody();
        assertEquals(ExitCode.DONE, why.obey("batch", file.toString(), "--why"), why.err());
        assertTrue(why.out().startsWith(plain.out().stripTrailing()), why.out());
        assertTrue(why.out().contains("- rule of thumb, from memory: "), why.out());
        assertTrue(why.out().contains("- published: "), why.out());
    }

    private static TerminalScreen writingTo(OutputStream out, TypedSession errors) {
        return new TerminalScreen(
                new WatchedOutput(out), errors.screen().err(), Optional.empty(), 80);
    }

    private static int help(TerminalScreen screen) {
        return new Terminal(
                        screen,
                        LessonFolder.in(TypedSession.LESSONS),
                        TypedSession.data(),
                        SharedBenches.SHARED)
                .execute("help");
    }

    private static OutputStream failing(String why) {
        return new OutputStream() {
            @Override
            public void write(int one) throws IOException {
                throw new IOException(why);
            }
        };
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void outputOnAFullDiskIsLostWithASentence() throws IOException {
        TypedSession typedSession = TypedSession.nobody();
        try (OutputStream full = new FileOutputStream("/dev/full")) {
            assertEquals(ExitCode.NOT_UNDERSTOOD, help(writingTo(full, typedSession)));
        }
        assertEquals(
                "The output could not be written: No space left on device. Free some space, or send it elsewhere.\n",
                typedSession.err());
    }

    @Test
    void aReaderThatLeavesIsNoFailureAndAClosedOutputIs() {
        TypedSession left = TypedSession.nobody();
        assertEquals(ExitCode.DONE, help(writingTo(failing("Broken pipe"), left)));
        assertEquals("", left.err());
        TypedSession closed = TypedSession.nobody();
        assertEquals(
                ExitCode.NOT_UNDERSTOOD, help(writingTo(failing("Bad file descriptor"), closed)));
        assertTrue(closed.err().contains("Bad file descriptor"), closed.err());
    }

    @Test
    void helpIsInTheLanguageOfTheSettings() {
        Words.show(Locale.GERMAN);
        try {
            TypedSession typedSession = TypedSession.nobody();
            typedSession.obey("help", "walk");
            assertTrue(typedSession.out().contains("Geht eine Lektion durch"), typedSession.out());
            assertTrue(typedSession.out().contains("Rückfrage alles erlauben"), typedSession.out());
        } finally {
            Words.show(Locale.ENGLISH);
        }
    }

    @Test
    void everyCommandOfLessonsExplainsItsOptionsAndExitCodes() {
        for (String command : List.of("walk", "check", "handout", "new")) {
            TypedSession typedSession = TypedSession.nobody();
            typedSession.obey("help", command);
            assertTrue(typedSession.out().contains("Exit codes:\n  0   "), typedSession.out());
            assertFalse(
                    typedSession.out().matches("(?s).*\n +--?\\w+(?:[= ]\\S+)?\n +-.*"),
                    "an option without a text: " + typedSession.out());
        }
    }

    @Test
    void checkWithoutANameChecksTheLessonsThatCame(@TempDir Path at) throws IOException {
        Files.writeString(
                at.resolve("01-oats.md"),
                "# t\n## s\n```java\nint a = 1;\n```\n```check\na is 1 within 0\n```\n");
        TypedSession typedSession = TypedSession.nobody();
        Terminal terminal =
                new Terminal(
                        typedSession.screen(),
                        LessonFolder.in(at),
                        TypedSession.data(),
                        SharedBenches.SHARED);
        assertEquals(ExitCode.DONE, terminal.execute("check"), typedSession.err());
        assertTrue(
                typedSession.out().startsWith("1 lesson, 1 snippet, 1 check line: all passed"),
                typedSession.out());
    }

    @Test
    void aFolderWithoutLessonsAndHandInsIsExplained(@TempDir Path at) {
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(ExitCode.NOT_UNDERSTOOD, typedSession.obey("check", at.toString()));
        assertEquals(
                at
                        + " has neither lessons (names that end in .md) nor hand-ins (names that end in .handin.txt).\n",
                typedSession.err());
    }

    @Test
    void aPathWithLostLettersNamesTheCharacterSet() {
        assertTrue(LessonSelection.isLost("/tmp/\uFFFD\uFFFDbung.md"));
        assertFalse(LessonSelection.isLost("/tmp/plain.md"));
        String said = LessonSelection.lost("/tmp/\uFFFDbung.md");
        assertTrue(said.contains("Set LC_ALL=C.UTF-8"), said);
    }
}
