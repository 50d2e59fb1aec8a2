package coldwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.complete.CompletionProposal;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** The bench is asked for names between runs. */
final class BenchNamesTest {
    private final Bench bench = Benches.shared();

    private static List<CompletionProposal> wait(CompletableFuture<List<CompletionProposal>> names)
            throws Exception {
        return names.get(Benches.HUNG_SECONDS, TimeUnit.SECONDS);
    }

    @Test
    void namesAreFoundAndRunsStayAsTheyWere() throws Exception {
        List<String> above = List.of("String flavour = \"malt\";");
        String snippet = "flavour.length();";
        assertEquals(
                new RunOutcome.Finished("4", "int"), Benches.run(bench, above, snippet).outcome());
        List<CompletionProposal> names = wait(bench.complete(above, "flavour.len", 11));
        assertEquals(
                List.of(new CompletionProposal("length", "length()", 8, "String", true, false)),
                names);
        assertEquals(
                new RunOutcome.Finished("4", "int"), Benches.run(bench, above, snippet).outcome());
    }

    @Test
    void nothingIsRun() throws Exception {
        String endless = "int turns = 0;\nwhile (true) { turns++; }\n";
        List<CompletionProposal> names =
                wait(bench.complete(List.of(), endless + "tur", endless.length() + 3));
        assertTrue(names.stream().anyMatch(one -> one.name().equals("turns")), names.toString());
    }

    @Test
    void anOlderQuestionGivesWay() throws Exception {
        CompletableFuture<List<CompletionProposal>> first =
                bench.complete(List.of(), "int a = 1; a", 12);
        CompletableFuture<List<CompletionProposal>> second =
                bench.complete(List.of(), "int b1 = 1; b1", 14);
        assertEquals("b1", wait(second).get(0).name());
        assertTrue(first.isCancelled());
    }

    @Test
    void aRunThatIsAskedForGoesFirst(@TempDir Path folder) throws Exception {
        List<String> order = Collections.synchronizedList(new ArrayList<>());
        CountDownLatch done = new CountDownLatch(3);
        Path gate = folder.resolve("gate");
        Benches.start(bench, List.of(), Benches.untilThereIs(gate), RunListener.NONE)
                .thenRun(() -> note("first run", order, done));
        bench.complete(List.of(), "int a1 = 1; a1", 14).thenRun(() -> note("names", order, done));
        Benches.start(bench, List.of(), "1 + 1", RunListener.NONE)
                .thenRun(() -> note("second run", order, done));
        Files.createFile(gate);
        assertTrue(done.await(Benches.HUNG_SECONDS, TimeUnit.SECONDS));
        assertEquals(List.of("first run", "second run", "names"), order);
    }

    private static void note(String what, List<String> order, CountDownLatch done) {
        order.add(what);
        done.countDown();
    }

    @Test
    void aClosedBenchCancelsTheQuestion() {
        Bench other = Bench.open(Benches.settings());
        CompletableFuture<List<CompletionProposal>> before = other.complete(List.of(), "a", 1);
        other.close();
        CompletableFuture<List<CompletionProposal>> after = other.complete(List.of(), "a", 1);
        assertTrue(after.isCancelled());
        assertTrue(before.isDone());
    }

    @Test
    void aCaretOutsideTheSnippetIsRefused() {
        IllegalArgumentException refused =
                assertThrows(
                        IllegalArgumentException.class, () -> bench.complete(List.of(), "ab", 3));
        assertEquals(
                "caret is 3; it must be between 0 and 2, the length of the snippet",
                refused.getMessage());
    }
}
