package coldwright.measure;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Measures what a person feels, beside yardsticks in the same run, and writes {@code
 * docs/performance.md}.
 */
public final class MeasuredRun {
    private static final int WINDOWS = 5;

    private MeasuredRun() {}

    /**
     * Measures.
     *
     * @param words the file to write; only the terminal if left out
     * @throws Exception if something does not run at all
     */
    public static void main(String[] words) throws Exception {
        List<Sample> samples = new ArrayList<>();
        Map<String, List<Double>> desk = windows();
        Map<String, List<Double>> empty = windows("empty");
        samples.add(sample("from command to window", desk, "window"));
        samples.add(sample("yardstick: from command to an empty JavaFX window", empty, "window"));
        samples.add(sample("from command to the home page", desk, "home"));
        samples.add(sample("from command to a lesson's page, opened at once", desk, "page"));
        samples.add(sample("from command to the first figure", desk, "figure"));
        Map<String, List<Double>> dial = said(probe(DialProbe.class));
        samples.add(
                sample(
                        "dial turned in the window: event to the frame drawn, 4 × 200 points",
                        dial,
                        "dial"));
        samples.add(
                sample("of these: from the result to the painted figure", dial, "dial_painted"));
        samples.add(
                sample("of these: waiting for the next frame, and its layout", dial, "dial_frame"));
        samples.add(
                sample(
                        "of these: JavaFX draws the frame (in software without a graphics card)",
                        dial,
                        "dial_drawn"));
        samples.add(
                sample(
                        "a task's wait for the window's thread while a snippet prints without end",
                        dial,
                        "errand"));
        samples.addAll(BenchMeasures.all());
        samples.add(KilledProbe.untilBenchesEnded(java()));
        samples.add(lessonsChecked());
        List<String> memory = new ArrayList<>();
        memory.add(memory("window", desk, "window_mb"));
        memory.add(memory("each bench process", desk, "bench_mb"));
        String page = page(samples, memory);
        System.out.println(page);
        if (words.length > 0) {
            Files.writeString(Path.of(words[0]), page, StandardCharsets.UTF_8);
        }
        System.exit(0);
    }

    private static Sample sample(String what, Map<String, List<Double>> said, String key) {
        return Sample.of(what, said.get(key).stream().mapToDouble(ms -> ms).toArray());
    }

    private static String memory(String what, Map<String, List<Double>> said, String key) {
        Sample sample = sample(what, said, key);
        return String.format(Locale.ROOT, "| %s | %.0f |", what, sample.medianMs());
    }

    private static Map<String, List<Double>> windows(String... words) throws Exception {
        Map<String, List<Double>> said = new LinkedHashMap<>();
        for (int i = 0; i < WINDOWS; i++) {
            said(probe(WindowProbe.class, words))
                    .forEach(
                            (key, values) ->
                                    said.computeIfAbsent(key, any -> new ArrayList<>())
                                            .addAll(values));
        }
        if (!said.containsKey("window")) {
            throw new IllegalStateException("no window came; is there a display?");
        }
        return said;
    }

    private static Map<String, List<Double>> said(String words) {
        Map<String, List<Double>> said = new LinkedHashMap<>();
        for (String line : words.lines().toList()) {
            String[] parts = line.split(" ", 2);
            if (parts.length == 2 && parts[1].matches("[0-9.]+")) {
                said.computeIfAbsent(parts[0], key -> new ArrayList<>())
                        .add(Double.parseDouble(parts[1]));
            }
        }
        return said;
    }

    private static String probe(Class<?> which, String... words) throws Exception {
        List<String> command = java();
        command.add("-Dcoldwright.data=" + Files.createTempDirectory("coldwright-measured"));
        command.add(which.getName());
        command.addAll(List.of(words));
        Process process =
                new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
        try (var in = process.getInputStream()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    static List<String> java() {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        for (String name :
                List.of("glass.platform", "monocle.platform", "prism.order", "java.awt.headless")) {
            if (System.getProperty(name) != null) {
                command.add("-D" + name + "=" + System.getProperty(name));
            }
        }
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx384m", "-cp"));
        command.add(System.getProperty("java.class.path"));
        return command;
    }

    private static Sample lessonsChecked() throws Exception {
        return Sample.of(
                "check of all lessons",
                0,
                3,
                () -> {
                    List<String> command = java();
                    command.addAll(List.of("coldwright.Main", "check", "lessons"));
                    Process process =
                            new ProcessBuilder(command)
                                    .redirectErrorStream(true)
                                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                                    .start();
                    if (process.waitFor() != 0) {
                        throw new IllegalStateException("the lessons don't hold");
                    }
                    return null;
                });
    }

    private static String page(List<Sample> samples, List<String> memory) {
        return """
        # Performance

        Written by the measured run (`DEVELOPERS.md` explains how), on %s, Java %s, %d cores%s. One run on a shared machine:
        compare the rows with their yardsticks, not with another machine's.

        | what | median, ms | p95, ms | times |
        |---|---|---|---|
        %s

        | memory | MB resident |
        |---|---|
        %s
        """
                .formatted(
                        cpu(),
                        System.getProperty("java.version"),
                        Runtime.getRuntime().availableProcessors(),
                        System.getProperty("glass.platform") == null
                                ? ""
                                : ", windows without a display (Monocle)",
                        samples.stream().map(Sample::row).collect(Collectors.joining("\n")),
                        String.join("\n", memory));
    }

    private static String cpu() {
        try {
            return Files.readAllLines(Path.of("/proc/cpuinfo")).stream()
                    .filter(line -> line.startsWith("model name"))
                    .map(line -> line.substring(line.indexOf(':') + 1).strip())
                    .findFirst()
                    .orElse("an unnamed processor");
        } catch (IOException | UncheckedIOException e) {
            return System.getProperty("os.arch");
        }
    }
}
