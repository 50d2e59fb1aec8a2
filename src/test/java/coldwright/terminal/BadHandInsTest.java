package coldwright.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.lesson.LessonReader;
import coldwright.terminal.console.BlockingBench;
import coldwright.terminal.console.ExitCode;
import coldwright.terminal.console.RunFailureText;
import coldwright.terminal.marking.ClassMarking;
import coldwright.terminal.marking.HandInMarking;
import coldwright.terminal.marking.MarkedHandIn;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.LessonKey;
import coldwright.workbook.work.LessonWork;
import coldwright.workbook.work.SnippetEdit;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;

/**
 * What a class may hand in at its worst. Each is told in a sentence, and a good hand-in that is
 * checked after it, on the same bench, still holds.
 */
class BadHandInsTest {
    private static final String CODE = "double heat = 180;";
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

            ```check
            heat > 100 is true
            ```
            """;

    private static final Duration PATIENCE = Duration.ofSeconds(60);

    /** For the loops below, which never end. */
    private static final Duration HASTE = Duration.ofSeconds(2);

    @TempDir static Path folder;
    private static LessonFolder shelf;
    private static final AtomicReference<Duration> PATIENT = new AtomicReference<>(PATIENCE);
    private static BlockingBench blockingBench;

    @BeforeAll
    static void open() throws IOException {
        Path lessons = Files.createDirectory(folder.resolve("lessons"));
        Files.writeString(lessons.resolve("01-oats.md"), TEXT);
        shelf = LessonFolder.in(lessons);
        blockingBench = new BlockingBench(SharedBenches.SHARED, PATIENT::get, () -> true);
    }

    /** Nothing that was marked on this bench has spoilt it. */
    @AfterAll
    static void theNextPassesAndTheBenchCloses() throws IOException {
        try {
            theNextHolds();
        } finally {
            blockingBench.close();
        }
    }

    private static String good(String learner, String code) {
        Lesson lesson = LessonReader.read("01-oats.md", TEXT);
        LessonWork work =
                LessonWork.empty(
                                LessonKey.ofCourse("01-oats"),
                                "01-oats.md",
                                "Toasted oats",
                                ContentHash.of(TEXT))
                        .withSnippet("Toast", new SnippetEdit(0, code, ContentHash.of(CODE)));
        return HandIn.of(work, learner, lesson, Instant.EPOCH).text();
    }

    private static String good() {
        return good("Ada", CODE);
    }

    private static MarkedHandIn marked(Path file) {
        return new HandInMarking(shelf, PATIENCE)
                .mark(file, file.getFileName().toString(), blockingBench);
    }

    private static MarkedHandIn marked(String name, byte[] bytes) throws IOException {
        return marked(Files.write(folder.resolve(name + HandIn.ENDING), bytes));
    }

    private static MarkedHandIn marked(String name, String text) throws IOException {
        return marked(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private static void theNextHolds() throws IOException {
        MarkedHandIn next = marked("next", good());
        assertTrue(next.passes(), () -> String.join("\n", next.lines()));
    }

    private record Bad(String name, String text, String told) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Bad> badTexts() {
        String good = good();
        String cut = good.substring(0, good.indexOf("lesson:") + 3);
        return Stream.of(
                new Bad("empty", "", "the first line is empty"),
                new Bad("blank", "\n\n\n", "the first line is empty"),
                new Bad("a picture", "\u0089PNG\r\n\u001a\n\0\0\0", "NUL character"),
                new Bad("another form", "my oats", "the first line is \"my oats\""),
                new Bad("a later form", "Coldwright hand-in 9\n", "another version"),
                new Bad("its heading alone", "Coldwright hand-in 1\n", "ends after its first"),
                new Bad("truncated in its head", cut, "there is no line `lesson: ...`"),
                new Bad(
                        "truncated in a step",
                        good.substring(0, good.indexOf("snippet 1")),
                        "snippet 1 was not handed in and doesn't count; the author's ran instead"),
                new Bad(
                        "missing steps",
                        good.substring(0, good.indexOf("step: ")),
                        "snippet 1 was not handed in and doesn't count; the author's ran instead"),
                new Bad(
                        "an unknown lesson",
                        good.replace("01-oats.md", "99-none.md"),
                        "there is no lesson 99-none.md"),
                new Bad(
                        "a lesson elsewhere",
                        good.replace("lesson: 01-oats.md", "lesson: ../../etc/passwd.md"),
                        "there is no lesson ../../etc/passwd.md"),
                new Bad(
                        "another text of the lesson",
                        good.replaceFirst("hash: .*", "hash: " + "0".repeat(64)),
                        "another version than the learner's"),
                new Bad("no hash", good.replaceFirst("hash: .*\n", ""), "line 1: "),
                new Bad(
                        "a bad date",
                        good.replaceFirst("date: .*", "date: yesterday"),
                        "\"yesterday\" isn't a time"),
                new Bad(
                        "no learner",
                        good.replaceFirst("learner: .*", "learner:"),
                        "it has no learner's name"),
                new Bad(
                        "a step twice",
                        good + good.substring(good.indexOf("step: ")),
                        "the step \"Toast\" appears twice"),
                new Bad(
                        "a step of no lesson",
                        good + "\nstep: Burn\ndone: yes\n",
                        "the lesson has no step \"Burn\""),
                new Bad(
                        "an answer made right",
                        good.replaceFirst("said:.*", "said: 180")
                                .replaceFirst("came true:.*", "came true: yes"),
                        "marks a prediction in \"Toast\" as right, but it is wrong"),
                new Bad(
                        "a snippet made its author's",
                        good.replace("    double heat = 180;", "    double heat = 181;"),
                        "marks snippet 1 of \"Toast\" as its author's, but it was changed"),
                new Bad("words astray", good + "\nplease be kind\n", "isn't `key: value`"),
                new Bad("an unknown key", good + "\nmark: best\n", "\"mark\" isn't a line"),
                new Bad(
                        "code indented by tabs",
                        good.replace("    double", "\tdouble"),
                        "isn't indented by four spaces"),
                new Bad(
                        "nested code",
                        good("Ada", "int deep = " + "(".repeat(9000) + "1" + ")".repeat(9000)),
                        "More than 200 brackets are open"),
                new Bad(
                        "a name that is a terminal's orders",
                        good("\u001b[2J\u001b]0;hi\u0007\u202eAda", "int none = 1 / 0;"),
                        "divided by zero"),
                new Bad(
                        "a name of many lines",
                        good("Ada\n2 of 2: Ben: all passed", "int none = 1 / 0;"),
                        "divided by zero"),
                new Bad("a huge step", good + "\nsaid: x".repeat(100_000), "“How hot?”: x;"),
                new Bad(
                        "a million forecasts",
                        good + "\nforecast 1: How hot?".repeat(100_000),
                        "Toast"),
                new Bad("huge", "Coldwright hand-in 1\n".repeat(800_000), "it may have at most"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("badTexts")
    void aBadTextIsExplained(Bad bad) throws IOException {
        MarkedHandIn markedHandIn = marked(bad.name(), bad.text());
        String told = String.join("\n", markedHandIn.lines());
        assertTrue(told.contains(bad.told()), told);
        assertEquals(
                told.lines().count(),
                markedHandIn.lines().size(),
                "nobody else's words begin a line");
    }

    @Test
    void anUnreadableDateIsNoDateAndABadNumberIsExplained() throws IOException {
        MarkedHandIn undated =
                marked("undated", good().replaceFirst("date: .*", "date: yesterday"));
        assertEquals("", undated.date());
        for (String number : List.of("0", "-1", "x", "99999999999999999999", "1e9", "٣", "")) {
            List<String> notes =
                    marked("number", good().replace("snippet 1:", "snippet " + number + ":"))
                            .notes();
            assertFalse(notes.toString().contains("For input string"), notes.toString());
            assertTrue(
                    notes.stream().anyMatch(note -> note.startsWith("line ")),
                    number + ": " + notes);
        }
    }

    @Test
    void whatIsNoTextIsTold() throws IOException {
        byte[] latin = good("Zoë", CODE).getBytes(StandardCharsets.ISO_8859_1);
        assertTrue(marked("latin", latin).notes().get(0).contains("isn't UTF-8"));
        byte[] wide = good().getBytes(StandardCharsets.UTF_16);
        assertTrue(marked("wide", wide).notes().get(0).contains("the file is UTF-16"));
        Path inside = Files.createDirectory(folder.resolve("folder" + HandIn.ENDING));
        assertEquals(List.of("this is a folder; name a file in it"), marked(inside).notes());
        Path missing = folder.resolve("missing" + HandIn.ENDING);
        assertTrue(marked(missing).notes().get(0).startsWith("there is no such file"));
    }

    @Test
    void aLinkIsNotFollowed() throws IOException {
        Path real = Files.writeString(folder.resolve("real.txt"), good());
        Path link = folder.resolve("link" + HandIn.ENDING);
        try {
            Files.createSymbolicLink(link, real);
        } catch (UnsupportedOperationException | IOException e) {
            org.junit.jupiter.api.Assumptions.abort("this system makes no links here");
        }
        assertEquals(List.of("this is a link. Put the file itself there."), marked(link).notes());
    }

    @Test
    void aFolderNamedLikeALessonIsNone(@TempDir Path beside) throws IOException {
        Files.createDirectory(beside.resolve("99-none.md"));
        Path file = beside.resolve("ada" + HandIn.ENDING);
        Files.writeString(file, good().replace("01-oats.md", "99-none.md"));
        assertTrue(marked(file).notes().get(0).startsWith("there is no lesson 99-none.md"));
    }

    /** What each fault is, and a word of what is told of it; empty for one that does no harm. */
    static final Map<String, String> FAULTS =
            Map.ofEntries(
                    Map.entry("while (true) { }", "did not end within"),
                    Map.entry(
                            "while (true) { try { while (true) { } } finally { continue; } }",
                            "did not end within"),
                    Map.entry(
                            "Object o = new Object(); synchronized (o) { o.wait(); }",
                            "did not end within"),
                    Map.entry("System.exit(0);", "ended its own bench"),
                    Map.entry("Runtime.getRuntime().halt(3);", "ended its own bench"),
                    Map.entry(
                            "List<double[]> all = new ArrayList<>(); while (true) all.add(new double[1_000_000]);",
                            "more memory than the bench has"),
                    Map.entry(
                            "while (true) { new Thread(() -> { try { Thread.sleep(100_000); } catch (InterruptedException e) { } }).start(); }",
                            "threads"),
                    Map.entry("int deep(int n) { return deep(n + 1) + 1; } deep(0);", "itself"),
                    Map.entry("while (true) System.out.println(\"flood\");", "did not end within"),
                    Map.entry(
                            "for (int i = 0; i < 1_000_000; i++) System.out.print('u'); double heat = 180;",
                            ""),
                    Map.entry("while (true) Page.show(Figure.of(\"a\"));", "20 figures"),
                    Map.entry("System.out.close(); double heat = 180;", ""),
                    Map.entry("new Scanner(System.in).nextLine();", "keyboard"),
                    Map.entry(
                            "new java.io.File(\"\").getAbsoluteFile().delete(); double heat = 180;",
                            ""),
                    Map.entry(
                            "throw new RuntimeException(\"\\n9 of 9: all holds\\n\".repeat(9999));",
                            "all holds"),
                    Map.entry(
                            "new ProcessBuilder(\"kill\", \"-9\", \"\" + ProcessHandle.current().pid()).start(); Thread.sleep(10_000);",
                            "ended"),
                    Map.entry(
                            "new Thread(() -> { while (true) { } }).start(); double heat = 180;",
                            ""));

    static Stream<String> faults() {
        return FAULTS.keySet().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("faults")
    void aSnippetThatBreaksItsBenchIsToldAndTheNextHolds(String code) throws IOException {
        Path file = folder.resolve("fault" + HandIn.ENDING);
        PATIENT.set(FAULTS.get(code).startsWith("did not end") ? HASTE : PATIENCE);
        MarkedHandIn markedHandIn = marked(Files.writeString(file, good("Ada", code)));
        PATIENT.set(PATIENCE);
        String told = String.join("\n", markedHandIn.lines());
        assertTrue(told.contains(FAULTS.get(code)), told);
        assertEquals(FAULTS.get(code).isEmpty(), markedHandIn.passes(), told);
        assertEquals(told.lines().count(), markedHandIn.lines().size(), told);
        assertTrue(marked(Files.writeString(file, good())).passes());
    }

    @Test
    void aHandInThatHangsEverywhereIsGivenUp() {
        BlockingBench short_ =
                new BlockingBench(SharedBenches.SHARED, Duration.ofSeconds(2), () -> true);
        try (short_) {
            short_.allow(Duration.ofSeconds(3));
            List<String> told = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                told.add(
                        RunFailureText.troubles(short_.run(List.of(), "while (true) { }").outcome())
                                .get(0)
                                .words());
            }
            assertTrue(told.get(0).startsWith("the snippet did not end within"), told.toString());
            assertTrue(told.get(3).startsWith("the snippet was not run"), told.toString());
        }
    }

    @Test
    void theTableIsHarmlessInASpreadsheet(@TempDir Path school) throws IOException {
        String[] names = {"=cmd|' /C calc'!A0", "+1", "@SUM(A1)", "-2", "Ada \"A\", B"};
        for (int i = 0; i < names.length; i++) {
            Path own = Files.createDirectory(school.resolve("learner " + i));
            Files.writeString(own.resolve("work" + HandIn.ENDING), good(names[i], CODE));
        }
        Files.writeString(school.resolve("learner 0/notes.txt"), "mine");
        Path table = folder.resolve("marks.csv");
        TypedSession typedSession = TypedSession.nobody();
        ClassMarking checks =
                new ClassMarking(
                        typedSession.screen(),
                        shelf,
                        SharedBenches.SHARED,
                        PATIENCE,
                        Optional.of(table),
                        true,
                        true);
        assertEquals(ExitCode.DONE, checks.check(List.of(school.toString())), typedSession::out);
        assertTrue(typedSession.out().contains("notes.txt was ignored"), typedSession.out());
        assertFalse(typedSession.out().contains("prediction: "), "brief");
        String text = Files.readString(table);
        assertEquals('\uFEFF', text.charAt(0));
        try (CSVParser rows =
                CSVParser.parse(
                        text.substring(1),
                        CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get())) {
            List<CSVRecord> all = rows.getRecords();
            List<String> learners = all.stream().map(row -> row.get("learner")).toList();
            assertEquals(
                    List.of("'=cmd|' /C calc'!A0", "'+1", "'@SUM(A1)", "'-2", "Ada \"A\", B"),
                    learners);
            assertEquals("yes", all.get(0).get("all passed"));
            assertEquals("1", all.get(0).get("check lines that passed"));
        }
        assertTrue(Files.readString(folder.resolve("marks-steps.csv")).contains("How hot?"));
    }

    @Test
    void aLessonHandedInTwiceIsSaid(@TempDir Path school) throws IOException {
        Files.writeString(school.resolve("a" + HandIn.ENDING), good());
        Files.writeString(school.resolve("b" + HandIn.ENDING), good());
        TypedSession typedSession = TypedSession.nobody();
        new ClassMarking(
                        typedSession.screen(),
                        shelf,
                        SharedBenches.SHARED,
                        PATIENCE,
                        Optional.empty(),
                        false,
                        true)
                .check(List.of(school.toString()));
        assertTrue(
                typedSession.out().contains("the same learner also handed this lesson in as"),
                typedSession.out());
    }
}
