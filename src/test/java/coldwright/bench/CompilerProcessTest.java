package coldwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The process that compiles may be overloaded or killed, and nothing else suffers. */
final class CompilerProcessTest {
    private static final String OVERLOADED =
            "Java’s compiler didn’t finish this snippet within 5 s of processor time and 256 MB."
                    + " Make it simpler.";

    /** The compiler's limit is in processor time; a busy machine gives it a small part. */
    private static final int HUNG_MINUTES = 10;

    private static Bench bench;

    @BeforeAll
    static void open() {
        bench = Bench.open(Benches.settings(), Duration.ofSeconds(5));
        Benches.run(bench, List.of(), "1"); // warm
    }

    @AfterAll
    static void close() {
        bench.close();
    }

    private String rejected(String snippet) {
        RunOutcome outcome =
                Benches.start(bench, List.of(), snippet, RunListener.NONE)
                        .orTimeout(HUNG_MINUTES, TimeUnit.MINUTES)
                        .join()
                        .outcome();
        return assertInstanceOf(RunOutcome.Rejected.class, outcome, outcome.toString())
                .problems()
                .get(0)
                .words();
    }

    /** Java copies what is in a {@code finally}, so each doubles the code of those within it. */
    private static String bomb() {
        int depth = 30;
        return "void f() { int i = 0; %s i++; %s }"
                .formatted("try { i++; } finally { ".repeat(depth), "}".repeat(depth));
    }

    /** Constants that each double the one before, with a plus sign as Java reads it too. */
    private static String constants(String plus) {
        return IntStream.range(0, 28)
                .mapToObj(i -> "static final String s%d = s%d %s s%d;".formatted(i + 1, i, plus, i))
                .collect(
                        Collectors.joining(
                                "", "class C { static final String s0 = \"abcdefghij\";", "}"));
    }

    @Test
    void whatOverloadsItEndsInASentence() {
        assertEquals(OVERLOADED, rejected(bomb()));
        assertEquals(OVERLOADED, rejected(constants("+")));
        assertEquals(OVERLOADED, rejected(constants("\\u002b")));
        assertEquals(
                new RunOutcome.Finished("42", "int"),
                Benches.run(bench, List.of("int a = 6;"), "a * 7").outcome());
    }

    @Test
    void aStopEndsIt() {
        CompletableFuture<FinishedRun> run =
                Benches.start(bench, List.of(), bomb(), RunListener.NONE);
        bench.stop();
        assertEquals(
                new RunOutcome.Stopped(),
                run.orTimeout(HUNG_MINUTES, TimeUnit.MINUTES).join().outcome());
    }

    @Test
    void whenItIsKilledTheNextRunStartsAnother() {
        List<String> above = List.of("double sugar = 120;", "sugar = sugar + 1;");
        assertEquals(
                new RunOutcome.Finished("121", "double", "121.0"),
                Benches.run(bench, above, "sugar").outcome());
        ProcessHandle.current()
                .children()
                .filter(one -> one.info().commandLine().orElse("").contains("CompilerMain"))
                .forEach(ProcessHandle::destroyForcibly);
        assertEquals(
                new RunOutcome.Finished("242", "double", "242.0"),
                Benches.run(bench, above, "sugar * 2").outcome());
        assertTrue(rejected("double half = \"x\";").startsWith("The variable `half` takes"));
    }

    /** The sentences do not depend on the language of the machine. */
    @Test
    void asksInEnglishOnAJapaneseMachine() {
        Locale own = Locale.getDefault();
        Locale.setDefault(Locale.JAPANESE);
        try {
            assertEquals(
                    "The variable `sugar` takes a number (double), not a string.",
                    rejected("double sugar = \"much\";"));
        } finally {
            Locale.setDefault(own);
        }
    }
}
