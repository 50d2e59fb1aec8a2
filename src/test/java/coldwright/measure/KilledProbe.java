package coldwright.measure;

import coldwright.bench.Bench;
import coldwright.bench.BenchClassPath;
import coldwright.bench.BenchSettings;
import coldwright.bench.RunListener;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A process of its own whose bench is deep in a loop; says the numbers of its bench processes. */
public final class KilledProbe {
    private static final int TIMES = 5;
    private static final int PATIENCE_S = 60;
    private static final String HANGS =
            "System.out.println(1);\n"
                    + "while (true) { try { while (true) { } } catch (Throwable e) { } }";

    private KilledProbe() {}

    /**
     * Runs a snippet without end.
     *
     * @param words none
     */
    public static void main(String[] words) {
        Bench bench = Bench.open(BenchSettings.usual(BenchClassPath.ofThisProgram(), List.of()));
        bench.run(
                        List.of(),
                        HANGS,
                        new RunListener() {
                            @Override
                            public void printed(String text) {
                                System.out.println(
                                        ProcessHandle.current()
                                                .descendants()
                                                .map(one -> Long.toString(one.pid()))
                                                .collect(Collectors.joining(" ")));
                            }
                        })
                .join();
    }

    /** Times how long benches live on after their program was killed. */
    static Sample untilBenchesEnded(List<String> java) throws Exception {
        List<String> command = new ArrayList<>(java);
        command.add(KilledProbe.class.getName());
        double[] ms = new double[TIMES];
        for (int i = 0; i < TIMES; i++) {
            Process program = new ProcessBuilder(command).start();
            try (BufferedReader said =
                    new BufferedReader(
                            new InputStreamReader(
                                    program.getInputStream(), StandardCharsets.UTF_8))) {
                List<ProcessHandle> benches =
                        Stream.of(said.readLine().split(" "))
                                .flatMap(pid -> ProcessHandle.of(Long.parseLong(pid)).stream())
                                .toList();
                long killed = System.nanoTime();
                program.toHandle().destroyForcibly();
                for (ProcessHandle bench : benches) {
                    bench.onExit().get(PATIENCE_S, TimeUnit.SECONDS);
                }
                ms[i] = (System.nanoTime() - killed) / 1e6;
            }
        }
        return Sample.of("program killed to its last bench process ended", ms);
    }
}
