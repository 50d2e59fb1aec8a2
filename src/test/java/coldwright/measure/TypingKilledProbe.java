package coldwright.measure;

import coldwright.desk.DeskApp;
import coldwright.desk.code.CodeEditor;
import coldwright.desk.messages.Messages;

import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.control.Button;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Kills the window while somebody types, and reports how much typing was lost: the time from the
 * first lost character to the kill. First on the machine as it is, then beside two busy loops of
 * the same priority.
 */
public final class TypingKilledProbe {
    private static final String TYPED = "¤";
    private static final int BETWEEN_KEYS_MS = 100;
    private static final int LEAST_TYPING_MS = 1_500;
    private static final int MORE_TYPING_MS = 2_000;
    private static final double MOST_LOST_S = 1;

    private TypingKilledProbe() {}

    /** A window in which somebody types until it is killed; each key is told with its time, ms. */
    public static final class Typist {
        private Typist() {}

        public static void main(String[] words) throws Exception {
            Thread app = new Thread(() -> Application.launch(DeskApp.class), "app");
            app.setDaemon(true);
            app.start();
            String start = Messages.of("home.start");
            WindowProbe.await(() -> button(start).findAny().isPresent());
            Platform.runLater(() -> button(start).findFirst().orElseThrow().fire());
            WindowProbe.await(() -> editors().findAny().isPresent());
            while (true) {
                Thread.sleep(BETWEEN_KEYS_MS);
                Platform.runLater(
                        () -> {
                            editors().findFirst().orElseThrow().appendText(TYPED);
                            System.out.println(System.currentTimeMillis());
                        });
            }
        }

        private static Stream<Button> button(String text) {
            return WindowProbe.nodes(
                            node -> node instanceof Button one && text.equals(one.getText()))
                    .map(Button.class::cast);
        }

        private static Stream<CodeEditor> editors() {
            return WindowProbe.nodes(CodeEditor.class::isInstance).map(CodeEditor.class::cast);
        }
    }

    /** Measures; the word is the number of tries, 50 by default. */
    public static void main(String[] words) throws Exception {
        int tries = words.length > 0 ? Integer.parseInt(words[0]) : 50;
        report("as the machine is", tries);
        for (int i = 0; i < 2; i++) {
            Thread busy = new Thread(TypingKilledProbe::spin, "busy");
            busy.setDaemon(true);
            busy.start();
        }
        report("beside two busy loops", tries);
        System.exit(0);
    }

    @SuppressWarnings("InfiniteLoopStatement")
    private static void spin() {
        while (true) {
            Thread.onSpinWait();
        }
    }

    private static void report(String when, int tries) throws Exception {
        double[] lostS = new double[tries];
        int seed = 0;
        for (int i = 0; i < tries; i++) {
            OptionalDouble lost;
            do {
                lost = lostS(seed++);
            } while (lost.isEmpty());
            lostS[i] = lost.getAsDouble();
        }
        Arrays.sort(lostS);
        System.out.printf(
                Locale.ROOT,
                "%s: %d tries, lost at most %.2f s, median %.2f s, more than %.0f s in %d%n",
                when,
                tries,
                lostS[tries - 1],
                lostS[tries / 2],
                MOST_LOST_S,
                Arrays.stream(lostS).filter(s -> s > MOST_LOST_S).count());
    }

    /** What one try lost, s; empty if the window did not open in time, so that nobody typed. */
    private static OptionalDouble lostS(int seed) throws Exception {
        Path data = Files.createTempDirectory("coldwright-typing");
        List<String> command = MeasuredRun.java();
        command.add("-Dcoldwright.data=" + data);
        command.add(Typist.class.getName());
        Process window =
                new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
        List<Long> typedMs = new ArrayList<>();
        long killedMs = Long.MAX_VALUE;
        try (BufferedReader keys =
                new BufferedReader(
                        new InputStreamReader(window.getInputStream(), StandardCharsets.UTF_8))) {
            long typingMs = (long) LEAST_TYPING_MS + new Random(seed).nextInt(MORE_TYPING_MS);
            for (String line = keys.readLine(); line != null; line = keys.readLine()) {
                typedMs.add(Long.parseLong(line));
                if (killedMs == Long.MAX_VALUE
                        && System.currentTimeMillis() - typedMs.get(0) > typingMs) {
                    killedMs = System.currentTimeMillis();
                    window.toHandle().destroyForcibly();
                }
            }
        }
        window.waitFor();
        int saved = saved(data);
        if (killedMs == Long.MAX_VALUE) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                saved < typedMs.size() ? Math.max(0, killedMs - typedMs.get(saved)) / 1e3 : 0);
    }

    /** How many typed characters the file of the lesson has. */
    private static int saved(Path data) throws IOException {
        int most = 0;
        try (Stream<Path> files = Files.walk(data)) {
            for (Path file : files.filter(one -> one.toString().endsWith(".txt")).toList()) {
                String text = Files.readString(file);
                most = Math.max(most, text.length() - text.replace(TYPED, "").length());
            }
        }
        return most;
    }
}
