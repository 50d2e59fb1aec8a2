package coldwright.desk.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.RunOutcome;
import coldwright.bench.SnippetProblem;
import coldwright.desk.page.TestDesk;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** What runs again when an author saves a lesson that is open. */
class RunAgainTest {
    private static final String TEXT =
            """
            # Rum

            ## One

            ```java
            int spoons = 1;
            ```

            ## Two

            ```java
            int rum = 40;
            ```

            ## Three

            ```java
            int never = 3;
            ```
            """;

    @TempDir private Path folder;

    private final ByHandRunner bench = new ByHandRunner();
    private final DeskModel desk = TestDesk.model(bench, TestDesk.UNKEPT);
    private Path file;

    @BeforeEach
    void theFirstTwoStepsHaveRun() throws IOException {
        file = Files.writeString(folder.resolve("rum.md"), TEXT);
        desk.openFile(file);
        desk.openLessons().agreeWhileWritten(desk.open().get());
        desk.open().get().snippets().get(0).run();
        bench.finish("");
        desk.open().get().snippets().get(1).run();
        bench.finish("");
    }

    private void save(String text) throws IOException {
        Files.writeString(file, text);
        desk.refresh(file);
    }

    private static RunOutcome slip() {
        return new RunOutcome.Rejected(
                List.of(new SnippetProblem(10, 15, 1, "`RUM_4` is not known here.", "")));
    }

    private static boolean done(DeskModel desk, int step) {
        return desk.open().get().steps().get(step).done().get();
    }

    @Test
    void whatTheAuthorsSlipStoppedRunsAgainOnceItIsMended() throws IOException {
        assertTrue(done(desk, 1));
        save(TEXT.replace("int rum = 40;", "int rum = RUM_4;"));
        bench.finish("");
        assertEquals("int rum = RUM_4;", bench.snippet());
        bench.end(slip(), "");
        assertTrue(done(desk, 0));
        assertFalse(done(desk, 1), "a step whose snippet fails is not done");

        save(TEXT);
        bench.finish("");
        assertEquals("int rum = 40;", bench.snippet());
        int begun = bench.begun();
        bench.finish("");
        assertEquals(begun, bench.begun(), "what never ran does not");
        assertTrue(done(desk, 1));
    }

    @Test
    void twoSlipsMendedInOneSaveThatAddsAStepRunAgainWhereTheyStandNow() throws IOException {
        save(TEXT.replace("= 1;", "= one;").replace("= 40;", "= RUM_4;"));
        bench.end(slip(), "");
        assertEquals("int spoons = one;", bench.snippet(), "the second waits for the first");
        save(TEXT.replace("## One", "## New\n\n```java\nint a = 0;\n```\n\n## One"));
        bench.finish("");
        bench.finish("");
        bench.finish("");
        assertEquals("int rum = 40;", bench.snippet());
        assertTrue(done(desk, 2));
        assertFalse(done(desk, 3));
    }

    @Test
    void whatFailedUnderTheLearnersHandRunsAgainToo() throws IOException {
        desk.open().get().snippets().get(2).run();
        bench.end(slip(), "");
        save(TEXT.replace("= 3;", "= 4;"));
        bench.finish("");
        bench.finish("");
        assertEquals("int never = 4;", bench.snippet());
    }

    @Test
    void whatWasStoppedDoesNot() throws IOException {
        desk.open().get().snippets().get(2).run();
        bench.end(new RunOutcome.Stopped(), "");
        save(TEXT.replace("= 3;", "= 4;"));
        bench.finish("");
        bench.finish("");
        assertEquals("int rum = 40;", bench.snippet());
    }
}
