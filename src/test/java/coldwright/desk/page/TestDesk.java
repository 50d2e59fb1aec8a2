package coldwright.desk.page;

import coldwright.desk.BenchRunner;
import coldwright.desk.figure.FigurePainter;
import coldwright.desk.figure.RenderContext;
import coldwright.desk.lesson.AppActions;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.model.DeskModel;
import coldwright.desk.model.PreferencesModel;
import coldwright.desk.model.WorkStore;
import coldwright.desk.run.RunContext;
import coldwright.desk.run.RunGate;
import coldwright.desk.run.RunQueue;
import coldwright.desk.run.SnippetRunner;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonReader;
import coldwright.workbook.settings.Preferences;
import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.LessonKey;

import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;

/** A desk to try things on: the real page, the real bench, a small lesson. */
public final class TestDesk {
    static final String LESSON =
            """
            # A lesson to press on

            Read *this* first.

            ## Draw a line

            ```forecast
            How high is it at its end?
            - low
            - * high

            It is what you wrote.
            ```

            ```java
            double top = 40;
            System.out.println("top " + top);
            show(Figure.of("A line").x("time", "s").y("height", "mm").line("line", 0, 10, x -> top * x));
            ```

            ```check
            top is 40 within 0.5 -- the first line
            top > 0 is true
            ```

            ## Run on

            ```java
            top * 2
            ```

            ## Read only

            The end.
            """;

    /** Keeps no work, and asks about every lesson that did not come with the program. */
    public static final WorkStore UNKEPT =
            new WorkStore() {
                @Override
                public void opened(LessonModel lesson) {}

                @Override
                public boolean agreed(ContentHash hash) {
                    return false;
                }

                @Override
                public void agree(ContentHash hash, String name) {}
            };

    private TestDesk() {}

    /** A program that does nothing outside of its window. */
    public static AppActions idle() {
        return new AppActions(
                () -> {},
                address -> {},
                () -> {},
                (lesson, name) -> {},
                (lesson, choice) -> {},
                () -> {});
    }

    /**
     * A desk without a window, on which all happens at once.
     *
     * @param runner runs snippets
     * @param workStore what keeps the learner's work
     */
    public static DeskModel model(SnippetRunner runner, WorkStore workStore) {
        return new DeskModel(LessonReader::read, runner, Runnable::run, Runnable::run, workStore);
    }

    /** A lesson without a desk. */
    public static LessonModel lesson(String text, SnippetRunner runner) {
        Lesson read = LessonReader.read("test.md", text);
        return new LessonModel(
                read,
                LessonKey.ofCourse(read.name()),
                new RunContext(new RunQueue(runner, Runnable::run), Runnable::run, RunGate.wide()));
    }

    static DeskModel lay(Stage stage, BenchRunner bench, Executor work) {
        return lay(stage, bench, work, new PreferencesModel(Preferences.usual()));
    }

    static DeskModel lay(Stage stage, BenchRunner bench, Executor work, PreferencesModel settings) {
        DeskModel desk = new DeskModel(LessonReader::read, bench, work, Platform::runLater, UNKEPT);
        RenderContext renderContext =
                new RenderContext(FigurePainter.STILL, work, Platform::runLater);
        stage.setScene(
                new Scene(
                        new DeskView(desk, settings, renderContext, idle(), Optional.empty()),
                        1200,
                        780));
        stage.setX(0);
        stage.setY(0);
        stage.show();
        desk.fetch(() -> List.of(LessonReader.read("press.md", LESSON)))
                .thenRun(() -> desk.open(desk.lessons().get(0)));
        return desk;
    }
}
