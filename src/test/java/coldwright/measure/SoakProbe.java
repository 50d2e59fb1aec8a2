package coldwright.measure;

import coldwright.desk.DeskApp;
import coldwright.desk.messages.Messages;

import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Opens lessons and goes home again, turns the classroom view's steps, and runs a snippet, many
 * times; now and then it kills the benches, so that they restart. Prints heap after a collection,
 * threads, open files and processes on the way, which should stay flat.
 */
public final class SoakProbe {
    private static final int REPORTS = 10;
    private static final int RUNS_OF_A_BENCH = 50;
    private static final double MB = 1 << 20;

    private SoakProbe() {}

    /** The words are the number of lessons to open and of runs, by default 200 and 500. */
    public static void main(String[] words) throws Exception {
        int lessons = words.length > 0 ? Integer.parseInt(words[0]) : 200;
        int runs = words.length > 1 ? Integer.parseInt(words[1]) : 500;
        Thread app = new Thread(() -> Application.launch(DeskApp.class), "app");
        app.setDaemon(true);
        app.start();
        WindowProbe.await(() -> look("home-lesson").findAny().isPresent());
        for (int i = 0; i <= lessons; i++) {
            report("lessons", i, lessons);
            int which = i;
            act(() -> at(look("home-lesson"), which).fire());
            press("classroom.open");
            press("classroom.next");
            press("classroom.exit");
            act(() -> button("Coldwright").fire());
            WindowProbe.await(() -> look("home-lesson").findAny().isPresent());
        }
        act(() -> at(look("home-lesson"), 0).fire());
        WindowProbe.await(() -> look("run-word").findAny().isPresent());
        for (int i = 0; i <= runs; i++) {
            report("runs", i, runs);
            if (i % RUNS_OF_A_BENCH == RUNS_OF_A_BENCH - 1) {
                ProcessHandle.current().children().forEach(ProcessHandle::destroyForcibly);
            }
            act(() -> at(look("run-word"), 0).fire());
            WindowProbe.await(() -> !at(look("run-word"), 0).isDisabled());
        }
        System.exit(0);
    }

    private static void report(String what, int done, int of) throws IOException {
        if (done % Math.max(1, of / REPORTS) != 0) {
            return;
        }
        System.gc();
        System.gc();
        double heapMb = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / MB;
        System.out.printf(
                Locale.ROOT,
                "%s %d: heap %.1f MB, %d threads, %d files, %d processes%n",
                what,
                done,
                heapMb,
                Thread.getAllStackTraces().size(),
                openFiles(),
                ProcessHandle.current().descendants().count());
    }

    /** Where the system shows them; 0 elsewhere. */
    private static long openFiles() throws IOException {
        Path own = Path.of("/proc/self/fd");
        if (!Files.isDirectory(own)) {
            return 0;
        }
        try (Stream<Path> all = Files.list(own)) {
            return all.count();
        }
    }

    private static void press(String key) throws Exception {
        String word = Messages.of(key);
        WindowProbe.await(
                () -> WindowProbe.nodes(node -> isButton(node, word)).findAny().isPresent());
        act(() -> button(word).fire());
    }

    private static boolean isButton(Node node, String word) {
        return node instanceof Button button && word.equals(((Labeled) button).getText());
    }

    private static Button button(String word) {
        return (Button) WindowProbe.nodes(node -> isButton(node, word)).findFirst().orElseThrow();
    }

    private static Stream<Button> look(String name) {
        return WindowProbe.nodes(
                        node -> node instanceof Button && node.getStyleClass().contains(name))
                .map(Button.class::cast);
    }

    private static Button at(Stream<Button> buttons, int index) {
        List<Button> all = buttons.toList();
        return all.get(index % all.size());
    }

    private static void act(Runnable action) {
        Supplier<Boolean> whole =
                () -> {
                    action.run();
                    return true;
                };
        CompletableFuture.supplyAsync(whole, Platform::runLater).join();
    }
}
