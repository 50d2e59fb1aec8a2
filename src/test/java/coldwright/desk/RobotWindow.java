package coldwright.desk;

import coldwright.desk.model.PreferencesModel;
import coldwright.lesson.LessonReader;
import coldwright.workbook.DataFolder;
import coldwright.workbook.LoadedWork;
import coldwright.workbook.Workbook;
import coldwright.workbook.settings.Preferences;

import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;

/**
 * The real window on a data folder, with a bench for robots; its lessons have every kind of part.
 */
final class RobotWindow implements AutoCloseable {
    private static final int PATIENCE_S = 60;
    private static final String LESSON =
            """
            # Robot lesson %1$d

            <!--
            track: Robots
            minutes: %1$d
            -->

            Read *this* about overrun first.

            ## Draw a line %1$d

            ```forecast
            How high is it at its end?
            - low
            - * high

            It is what you wrote.
            ```

            ```java given
            double before = %1$d;
            ```

            ```java
            double top = 40; // dial 0 to 80 step 1 mm
            show(Figure.of("A line").x("time", "min").y("height", "mm").line("line", 0, 10, x -> x));
            ```

            ```check
            top is 40 within 0.5 -- the first line
            top > 0 is true
            ```

            ```teacher
            Wait for the slowest.
            ```

            ## Type a number

            The initial freezing point of a mix with much MSNF at −2.5 °C. %2$s

            ```forecast
            How cold is it?
            answer: -2.5 °C within 0.5

            As cold as that.
            ```

            ```java
            top * 2
            ```

            ## Solve it

            Overrun and draw temperature.

            ```java
            double malt = 10;
            ```

            ```solution
            double malt = 20;
            ```

            ## Read only

            The end.
            """;

    private final Path folder;
    private final List<Throwable> broken = Collections.synchronizedList(new ArrayList<>());
    private final int threadsBefore = Thread.getAllStackTraces().size();
    private final Set<ProcessHandle> processesBefore =
            ProcessHandle.current().children().collect(Collectors.toSet());
    private Thread.UncaughtExceptionHandler formerHandler;
    private DeskThreads threads;
    private Stage stage;
    private DeskWindow window;

    RobotWindow(Path folder) throws Exception {
        this.folder = folder;
        open();
    }

    private void open() throws Exception {
        threads = DeskThreads.start();
        ask(
                () -> {
                    Thread toolkit = Thread.currentThread();
                    formerHandler = toolkit.getUncaughtExceptionHandler();
                    toolkit.setUncaughtExceptionHandler((thread, error) -> broken.add(error));
                    Workbook workbook = Workbook.open(new DataFolder(folder));
                    LoadedWork<Preferences> kept = workbook.preferences();
                    PreferencesModel settings = new PreferencesModel(kept.value());
                    stage = new Stage();
                    stage.setScene(new Scene(new StackPane(), 1200, 780));
                    window =
                            new DeskWindow(
                                    stage,
                                    threads,
                                    workbook,
                                    settings,
                                    new RobotRunner(),
                                    () -> {},
                                    address -> {});
                    stage.setX(0);
                    stage.setY(0);
                    stage.show();
                    return window.desk()
                            .fetch(
                                    () ->
                                            List.of(
                                                    lesson(1, ""),
                                                    lesson(2, "Long text. ".repeat(300))));
                });
        settle();
    }

    private static coldwright.lesson.Lesson lesson(int number, String more) {
        return LessonReader.read("0%d-robot.md".formatted(number), LESSON.formatted(number, more));
    }

    /** Closes the window and opens it again, as a learner would on another day. */
    void restart() throws Exception {
        close();
        open();
    }

    /** Waits until nothing is to be done any more, as far as a never-ending run allows that. */
    void settle() throws Exception {
        for (int i = 0; i < 3; i++) {
            Thread.sleep(6);
            ask(() -> true);
        }
        // a scroll bar that comes or goes makes a page narrower or wider in a second layout
        for (int i = 0; i < 2; i++) {
            ask(
                    () -> {
                        stage.getScene().getRoot().applyCss();
                        stage.getScene().getRoot().layout();
                        return true;
                    });
        }
    }

    /** Asks on the window's thread. */
    static <T> T ask(Callable<T> question) throws Exception {
        CompletableFuture<T> answer = new CompletableFuture<>();
        Platform.runLater(
                () -> {
                    try {
                        answer.complete(question.call());
                    } catch (Throwable e) {
                        answer.completeExceptionally(e);
                    }
                });
        return answer.get(PATIENCE_S, TimeUnit.SECONDS);
    }

    @Override
    public void close() {
        try {
            ask(
                    () -> {
                        window.close();
                        stage.close();
                        Thread.currentThread().setUncaughtExceptionHandler(formerHandler);
                        return true;
                    });
        } catch (Exception broke) {
            throw new AssertionError("the window does not close", broke);
        } finally {
            threads.close();
        }
    }

    Stage stage() {
        return stage;
    }

    DeskWindow window() {
        return window;
    }

    Path folder() {
        return folder;
    }

    /** How many threads the window has started and not ended. */
    int moreThreads() {
        return Thread.getAllStackTraces().size() - threadsBefore;
    }

    /** How many processes the window has started and not ended. */
    long moreProcesses() {
        return ProcessHandle.current()
                .children()
                .filter(one -> !processesBefore.contains(one))
                .count();
    }

    /** Exceptions on the window's thread. */
    List<Throwable> broken() {
        return broken;
    }
}
