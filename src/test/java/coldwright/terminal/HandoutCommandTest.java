package coldwright.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonReader;
import coldwright.terminal.console.ExitCode;
import coldwright.workbook.DataFolder;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.LessonKey;
import coldwright.workbook.work.LessonWork;
import coldwright.workbook.work.StepWork;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** The commands of a teacher's desk; one bench here is real. */
class HandoutCommandTest {
    @TempDir Path folder;

    private String path(String name) {
        return folder.resolve(name).toString();
    }

    @Test
    void setsALessonWithWhatItsRunsGave() throws IOException {
        TypedSession typedSession = TypedSession.nobody();
        String file = path("oats.html");
        assertEquals(
                ExitCode.DONE,
                typedSession.obey("handout", "warm", "--answers", "-o", file),
                typedSession.err());
        String html = Files.readString(Path.of(file));
        assertTrue(html.contains("toasting 300 g"));
        assertTrue(html.contains("<b>Figure 1.</b> Oats on trays."));
        assertTrue(html.contains("<b>ten minutes</b>"));
    }

    @Test
    void asksOnlyIfALessonGoesBeyondAndKeepsTheYes() throws IOException {
        String text =
                "# Theirs\n\n## One\n\n```java\nSystem.out.println(new java.io.File(\"a\").getName().length() + 41);\n```\n";
        String lesson = Files.writeString(folder.resolve("theirs.md"), text).toString();
        String html = path("theirs.html");
        DataFolder data = TypedSession.data();
        TypedSession unwilling = TypedSession.at(60, "no");
        assertEquals(ExitCode.FAILED, unwilling.obey(data, "handout", lesson, "-o", html));
        assertTrue(unwilling.out().endsWith("Allow that? (yes or no): \n" + html + "\n"));
        assertTrue(Files.readString(Path.of(html)).contains("Lessons can’t read or write files"));
        TypedSession willing = TypedSession.at(60, "yes");
        assertEquals(
                ExitCode.DONE,
                willing.obey(data, "handout", lesson, "--replace", "-o", html),
                willing.err());
        assertTrue(Files.readString(Path.of(html)).contains(">42</pre>"));
        TypedSession walker = TypedSession.at(60, "", "");
        assertEquals(ExitCode.DONE, walker.obey(data, "walk", lesson));
        assertFalse(walker.out().contains("Allow that?"), walker.out());
        assertTrue(walker.out().contains("\n42\n"), walker.out());
    }

    @Test
    void asksBeforeItWritesOverAFile() throws IOException {
        Path there = Files.writeString(folder.resolve("there.html"), "precious");
        TypedSession unwilling = TypedSession.at(200, "");
        assertEquals(
                ExitCode.FAILED,
                unwilling.obey("handout", "warm", "--blank", "-o", there.toString()));
        assertEquals(
                there.toString().replace('\\', '/') + " exists. Overwrite it? (yes or no): \n",
                unwilling.out());
        assertTrue(unwilling.err().contains("there.html. Give another name"), unwilling.err());
        assertEquals("precious", Files.readString(there));
        for (TypedSession willing : List.of(TypedSession.at(80, "y"), TypedSession.nobody())) {
            Files.writeString(there, "precious");
            assertEquals(
                    ExitCode.DONE,
                    willing.obey("handout", "warm", "--blank", "-o", there.toString()));
            assertTrue(Files.readString(there).contains("Warm oats"));
        }
        TypedSession unasked = TypedSession.at(80);
        assertEquals(
                ExitCode.DONE,
                unasked.obey("handout", "warm", "--blank", "--replace", "-o", there.toString()));
        assertFalse(unasked.out().contains("yes or no"), unasked.out());
    }

    @Test
    void aFolderThatIsNotThereIsSaidBeforeAnythingIsAskedOrRun() throws IOException {
        String text = "# Theirs\n\n## One\n\n```java\nSystem.out.println(6 * 7);\n```\n";
        String lesson = Files.writeString(folder.resolve("theirs.md"), text).toString();
        TypedSession typedSession = TypedSession.at(80, "yes");
        String file = path("missing/out.pdf");
        assertEquals(ExitCode.NOT_UNDERSTOOD, typedSession.obey("handout", lesson, "-o", file));
        assertEquals("", typedSession.out());
        assertTrue(typedSession.err().contains("out.pdf can't be written: its folder doesn't"));
    }

    @Test
    void aSheetAsksBeforeItWritesOverAFileTooUnlessItIsTold() throws IOException {
        Path batch = Path.of("src/test/resources/batches/oat.batch");
        Path there = Files.writeString(folder.resolve("there.html"), "precious");
        TypedSession unwilling = TypedSession.at(200, "no");
        assertEquals(
                ExitCode.FAILED,
                unwilling.obey("batch", batch.toString(), "--sheet", there.toString()),
                unwilling.err());
        assertTrue(unwilling.out().contains("Overwrite it? (yes or no)"), unwilling.out());
        assertTrue(unwilling.err().contains("another name with --sheet, or add --replace"));
        assertEquals("precious", Files.readString(there));
        TypedSession told = TypedSession.at(200);
        assertEquals(
                ExitCode.DONE,
                told.obey("batch", batch.toString(), "--replace", "--sheet", there.toString()),
                told.err());
        assertFalse(Files.readString(there).contains("precious"));
    }

    @Test
    void ofAPackEachLessonGetsAFile() throws IOException {
        Path pack = folder.resolve("pack.zip");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(pack))) {
            for (String name : new String[] {"a.md", "in/b.md"}) {
                zip.putNextEntry(new ZipEntry(name));
                zip.write("# Own\n\n## A\n\nText.\n".getBytes(StandardCharsets.UTF_8));
            }
        }
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(
                ExitCode.DONE,
                typedSession.obey("handout", pack.toString(), "--blank", "-o", path("out.html")),
                typedSession.err());
        assertTrue(Files.exists(folder.resolve("out-a.html")));
        assertTrue(Files.exists(folder.resolve("out-b.html")));
    }

    /** The work goes the way that the window's does: from what was kept, by a file, to paper. */
    @Test
    void aHandInStandsInItsLessonAndIsRunAnew() throws IOException {
        String text =
                """
                # Weighing

                ## Twice

                ```forecast
                How much is twice 20 g?
                number: 40 g within 1

                Twice as much.
                ```

                ```java
                double massG = 20;
                massG * 2
                ```
                """;
        Path lesson = Files.writeString(folder.resolve("weighing.md"), text);
        Lesson read = LessonReader.read("weighing.md", text);
        LessonWork kept =
                LessonWork.empty(
                                LessonKey.ofCourse("weighing"),
                                "weighing.md",
                                read.title(),
                                ContentHash.of(text))
                        .withStep(
                                StepWork.empty("Twice")
                                        .withSnippet(
                                                0,
                                                "double massG = 21.5;\nmassG * 2",
                                                "double massG = 20;\nmassG * 2"));
        HandIn work = HandIn.of(kept, "Ida", read, Instant.EPOCH);
        Path file = Files.writeString(folder.resolve(work.fileName()), work.text());
        String html = path("work.html");
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(
                ExitCode.DONE,
                typedSession.obey(
                        "handout", lesson.toString(), "--work", file.toString(), "-o", html),
                typedSession.err());
        String set = Files.readString(Path.of(html));
        assertTrue(set.contains("Work of <b>Ida</b>"), set);
        assertTrue(set.contains("21.5"), set);
        assertTrue(set.contains("<pre class=\"came\">43</pre>"), set);
    }

    @Test
    void refusesWhatItDoesNotUnderstand() {
        TypedSession typedSession = TypedSession.nobody();
        assertEquals(
                ExitCode.NOT_UNDERSTOOD, typedSession.obey("handout", "warm", "-o", path("x.doc")));
        assertEquals(
                ExitCode.NOT_UNDERSTOOD,
                typedSession.obey("handout", "warm", "--paper", "a3", "-o", path("x.pdf")));
        assertEquals(
                ExitCode.NOT_UNDERSTOOD,
                typedSession.obey("handout", "warm", "--blank", "--answers", "-o", path("x.pdf")));
        assertTrue(
                typedSession.err().contains("--paper is a3; it must be a4 or letter"),
                typedSession.err());
    }

    @Test
    void aNewLessonNeverTakesThePlaceOfAnother() throws IOException {
        TypedSession typedSession = TypedSession.nobody();
        String file = path("mine.md");
        assertEquals(ExitCode.DONE, typedSession.obey("new", file));
        Files.writeString(Path.of(file), "precious");
        assertEquals(ExitCode.NOT_UNDERSTOOD, typedSession.obey("new", file));
        assertEquals("precious", Files.readString(Path.of(file)));
        assertTrue(typedSession.err().contains("exists and was not changed"));
        assertEquals(ExitCode.NOT_UNDERSTOOD, typedSession.obey("new", path("mine.txt")));
    }
}
