package coldwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** No bench outlives its program, whatever it runs and however the program ends. */
final class HostKilledTest {
    /** A program with a bench that is deep in a loop that catches everything. */
    static final class Program {
        private Program() {}

        public static void main(String[] args) throws IOException {
            Bench bench = Bench.open(Benches.settings());
            RunListener watcher =
                    new RunListener() {
                        @Override
                        public void printed(String text) {
                            System.out.println("running " + text.strip() + " " + descendants());
                        }
                    };
            Benches.start(
                    bench,
                    List.of(),
                    "System.out.println(new java.io.File(\"\").getAbsoluteFile().getParent());\n"
                            + "while (true) { try { while (true) { } } catch (Throwable e) { } }",
                    watcher);
            int word = System.in.read();
            if (word == 'c') {
                bench.close();
            }
        }

        private static String descendants() {
            List<String> pids = new ArrayList<>();
            ProcessHandle.current().descendants().forEach(one -> pids.add("" + one.pid()));
            return String.join(",", pids);
        }
    }

    private static Process start() throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Program.class.getName())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static void endsAll(Ending ending) throws Exception {
        Process program = start();
        try (BufferedReader reader =
                new BufferedReader(
                        new java.io.InputStreamReader(
                                program.getInputStream(), StandardCharsets.UTF_8))) {
            String[] words = reader.readLine().split(" ");
            assertEquals("running", words[0]);
            Path folder = Path.of(words[1]);
            List<ProcessHandle> benches = new ArrayList<>();
            for (String pid : words[2].split(",")) {
                ProcessHandle.of(Long.parseLong(pid)).ifPresent(benches::add);
            }
            assertFalse(benches.isEmpty(), "a bench lives");
            assertTrue(Files.exists(folder), "its folder is there");
            ending.end(program);
            for (ProcessHandle bench : benches) {
                bench.onExit().get(Benches.HUNG_SECONDS, TimeUnit.SECONDS);
            }
            assertTrue(program.waitFor(Benches.HUNG_SECONDS, TimeUnit.SECONDS));
            assertFalse(Files.exists(folder), "its folder is gone");
        } finally {
            program.destroyForcibly();
        }
    }

    /** A way to end a program. */
    private interface Ending {
        void end(Process program) throws IOException;
    }

    @Test
    void whenItIsKilled() throws Exception {
        endsAll(Process::destroyForcibly);
    }

    @Test
    void whenItIsAskedToEnd() throws Exception {
        endsAll(Process::destroy);
    }

    @Test
    void whenItEndsByItself() throws Exception {
        endsAll(program -> program.getOutputStream().close());
    }

    @Test
    void whenItClosesItsBench() throws Exception {
        endsAll(
                program -> {
                    program.getOutputStream().write('c');
                    program.getOutputStream().flush();
                });
    }
}
