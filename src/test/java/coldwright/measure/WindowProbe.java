package coldwright.measure;

import coldwright.desk.DeskApp;

import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.image.ImageView;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javafx.stage.Window;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A process of its own that opens a window and says when it stood and when its first figure did, ms
 * since the process began. With the word {@code empty} it opens an empty window instead.
 */
public final class WindowProbe {
    private static final int PATIENCE_S = 60;
    private static final int LOOK_AGAIN_MS = 5;
    private static final String BEGIN = "Begin the course";

    private WindowProbe() {}

    /** A window with nothing in it. */
    public static final class Empty extends Application {
        @Override
        public void start(Stage stage) {
            stage.setScene(new Scene(new StackPane(), 1280, 800));
            stage.show();
        }
    }

    /**
     * Opens the window and reports.
     *
     * @param words {@code empty} for an empty window
     * @throws Exception if a window or figure does not come
     */
    public static void main(String[] words) throws Exception {
        boolean empty = words.length > 0 && words[0].equals("empty");
        Thread app =
                new Thread(() -> Application.launch(empty ? Empty.class : DeskApp.class), "app");
        app.setDaemon(true);
        app.start();
        say("window", windowShown());
        if (!empty) {
            await(() -> buttons(BEGIN).findAny().isPresent());
            say("home", sinceStart());
            Platform.runLater(() -> buttons(BEGIN).findFirst().orElseThrow().fire());
            await(() -> buttons("Run").findAny().isPresent());
            say("page", sinceStart());
            Platform.runLater(() -> buttons("Run").findFirst().orElseThrow().fire());
            await(() -> nodes(WindowProbe::isFigure).findAny().isPresent());
            say("figure", sinceStart());
            Thread.sleep(3000);
            say("window_mb", residentMb(ProcessHandle.current()));
            double[] bench =
                    ProcessHandle.current()
                            .descendants()
                            .mapToDouble(WindowProbe::residentMb)
                            .toArray();
            for (double mb : bench) {
                say("bench_mb", mb);
            }
        }
        Platform.exit();
        System.exit(0);
    }

    static void say(String what, double value) {
        System.out.println(what + " " + value);
    }

    private static double sinceStart() {
        return System.currentTimeMillis() - ManagementFactory.getRuntimeMXBean().getStartTime();
    }

    static boolean isFigure(Node node) {
        return node instanceof ImageView view
                && view.getImage() != null
                && view.getImage().getWidth() > 200;
    }

    private static Stream<Button> buttons(String text) {
        return nodes(node -> node instanceof Button button && text.equals(button.getText()))
                .map(Button.class::cast);
    }

    static Stream<Node> nodes(Predicate<Node> wanted) {
        return Window.getWindows().stream()
                .filter(Window::isShowing)
                .flatMap(window -> below(window.getScene().getRoot()))
                .filter(wanted);
    }

    private static Stream<Node> below(Node node) {
        return node instanceof Parent parent
                ? Stream.concat(
                        Stream.of(node),
                        parent.getChildrenUnmodifiable().stream().flatMap(WindowProbe::below))
                : Stream.of(node);
    }

    /** Waits until something holds on the window's thread and two frames more have been drawn. */
    static void await(BooleanSupplier condition) throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
        while (System.nanoTime() < end) {
            CompletableFuture<Boolean> seen = new CompletableFuture<>();
            try {
                Platform.runLater(() -> seen.complete(condition.getAsBoolean()));
            } catch (IllegalStateException notYet) {
                seen.complete(false);
            }
            if (seen.get(PATIENCE_S, TimeUnit.SECONDS)) {
                twoFrames();
                return;
            }
            Thread.sleep(LOOK_AGAIN_MS);
        }
        throw new IllegalStateException("it did not come within " + PATIENCE_S + " s");
    }

    /**
     * Waits for the first window. The program fills it as soon as it is drawn, on the thread that
     * would tell; so what counts is when the frame began that follows its first one.
     */
    private static double windowShown() throws Exception {
        CompletableFuture<Double> drawn = new CompletableFuture<>();
        ListChangeListener<Window> added = change -> countFrames(drawn);
        for (boolean asked = false; !asked; ) {
            try {
                Platform.runLater(
                        () -> {
                            if (Window.getWindows().isEmpty()) {
                                Window.getWindows().addListener(added);
                            } else {
                                countFrames(drawn);
                            }
                        });
                asked = true;
            } catch (IllegalStateException notYet) {
                Thread.sleep(LOOK_AGAIN_MS);
            }
        }
        return drawn.get(PATIENCE_S, TimeUnit.SECONDS);
    }

    private static void twoFrames() throws Exception {
        CompletableFuture<Double> drawn = new CompletableFuture<>();
        Platform.runLater(() -> countFrames(drawn));
        drawn.get(PATIENCE_S, TimeUnit.SECONDS);
    }

    /** The first frame lays out and draws; when the second begins, the first is on the screen. */
    private static void countFrames(CompletableFuture<Double> drawn) {
        new AnimationTimer() {
            private int frames;

            @Override
            public void handle(long now) {
                if (++frames == 2) {
                    stop();
                    drawn.complete(sinceStart() - (System.nanoTime() - now) / 1e6);
                }
            }
        }.start();
    }

    private static double residentMb(ProcessHandle process) {
        try (Stream<String> lines = Files.lines(Path.of("/proc/" + process.pid() + "/status"))) {
            return lines.filter(line -> line.startsWith("VmRSS"))
                            .mapToLong(line -> Long.parseLong(line.replaceAll("[^0-9]", "")))
                            .findFirst()
                            .orElse(0)
                    / 1024.0;
        } catch (IOException e) {
            return 0;
        }
    }
}
