package coldwright.terminal;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunOutcome;
import coldwright.terminal.console.BlockingBench;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/** A run is limited by the processor time that it uses, and hand-ins are apart. */
final class ProcessorLimitTest {
    @Test
    void anEndlessLoopIsStopped() {
        try (BlockingBench bench =
                new BlockingBench(SharedBenches.SHARED, Duration.ofSeconds(1), () -> false)) {
            FinishedRun run = bench.run(List.of(), "while (true) { }");
            RunOutcome.Died died = assertInstanceOf(RunOutcome.Died.class, run.outcome());
            assertTrue(died.why().contains("did not end within 1 seconds"), died.why());
            assertTrue(bench.run(List.of(), "1 + 1").outcome().finished());
        }
    }

    @Test
    void aFreshStartTakesAnotherProcess() throws Exception {
        try (BlockingBench bench =
                new BlockingBench(SharedBenches.SHARED, Duration.ofSeconds(60), () -> false)) {
            bench.run(List.of(), "1 + 1");
            bench.run(List.of("1 + 1"), "2 + 2");
            List<ProcessHandle> before = ProcessHandle.current().children().toList();
            bench.run(List.of("1 + 1", "2 + 2"), "3 + 3");
            assertTrue(
                    before.stream().allMatch(ProcessHandle::isAlive), "the same process is used");
            bench.startAfresh();
            assertTrue(bench.run(List.of("1 + 1"), "2 + 2").outcome().finished());
            CompletableFuture.anyOf(
                            before.stream()
                                    .map(ProcessHandle::onExit)
                                    .toArray(CompletableFuture[]::new))
                    .get(60, TimeUnit.SECONDS);
        }
    }

    private static void signal(String name, List<ProcessHandle> children) {
        for (ProcessHandle child : children) {
            try {
                new ProcessBuilder("kill", name, String.valueOf(child.pid())).start().waitFor();
            } catch (IOException | InterruptedException e) {
                throw new AssertionError(e);
            }
        }
    }

    /** The bench's processes are halted for a while, as on a machine that has no time for them. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void aRunThatGetsNoProcessorTimeIsTheMachinesFault() {
        try (BlockingBench bench =
                new BlockingBench(SharedBenches.SHARED, Duration.ofMillis(500), () -> false)) {
            bench.run(List.of(), "1 + 1");
            bench.allow(Duration.ofSeconds(60));
            List<ProcessHandle> children = ProcessHandle.current().children().toList();
            signal("-STOP", children);
            CompletableFuture.delayedExecutor(7, TimeUnit.SECONDS)
                    .execute(() -> signal("-CONT", children));
            RunOutcome outcome = bench.run(List.of(), "1 + 2").outcome();
            RunOutcome.Died died = assertInstanceOf(RunOutcome.Died.class, outcome);
            assertTrue(died.why().startsWith("the machine was too busy"), died.why());
            assertTrue(bench.wasBusy());
        }
    }
}
