package coldwright.bench.confine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.Bench;
import coldwright.bench.BenchClassPath;
import coldwright.bench.BenchSettings;
import coldwright.bench.FinishedRun;
import coldwright.bench.RunListener;
import coldwright.bench.RunOutcome;
import coldwright.bench.SnippetRights;
import coldwright.bench.compile.SnippetSource;
import coldwright.lesson.Prelude;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Java that learners write runs confined, and gives what Java gives. */
final class HonestSnippetsTest {
    private static Bench bench;

    @BeforeAll
    static void open() {
        bench = Bench.open(BenchSettings.usual(BenchClassPath.ofThisProgram(), Prelude.imports()));
    }

    @AfterAll
    static void close() {
        bench.close();
    }

    static List<SnippetFile> snippets() throws IOException {
        return SnippetFile.read("honest.txt");
    }

    @Test
    void thereAreAtLeast300() throws IOException {
        assertTrue(snippets().size() >= 300);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("snippets")
    void runsConfined(SnippetFile snippet) throws Exception {
        FinishedRun run =
                bench.run(
                                List.of(SnippetSource.of(snippet.code())),
                                SnippetRights.CONFINED,
                                RunListener.NONE)
                        .get(60, TimeUnit.SECONDS);
        assertEquals(new RunOutcome.Finished("true", "boolean"), run.outcome());
    }
}
