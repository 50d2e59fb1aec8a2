package coldwright.desk;

import coldwright.desk.batch.model.BatchStore;
import coldwright.desk.figure.FigurePainter;
import coldwright.desk.figure.RenderContext;
import coldwright.desk.lesson.AppActions;
import coldwright.desk.messages.Messages;
import coldwright.desk.model.DeskModel;
import coldwright.desk.model.PreferencesModel;
import coldwright.desk.page.DeskView;
import coldwright.desk.run.SnippetRunner;
import coldwright.lesson.LessonReader;
import coldwright.words.Words;
import coldwright.workbook.Workbook;
import coldwright.workbook.settings.Preferences;

import javafx.application.Platform;
import javafx.stage.Stage;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/** A window with a workbook: its models, its view, and what saves their state. */
final class DeskWindow implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger("coldwright.desk");

    private final Stage stage;
    private final DeskThreads threads;
    private final PreferencesModel settings;
    private final Runnable renewBench;
    private final Consumer<String> openLink;
    private final WorkKeeper workKeeper;
    private final DeskModel desk;
    private final HandoutPrinter printer;
    private final BatchStore batches;

    /** Fills a stage; {@code renewBench} gives the next run a new bench, as limits have changed. */
    DeskWindow(
            Stage stage,
            DeskThreads threads,
            Workbook workbook,
            PreferencesModel settings,
            SnippetRunner runner,
            Runnable renewBench,
            Consumer<String> openLink) {
        this.stage = stage;
        this.threads = threads;
        this.settings = settings;
        this.renewBench = renewBench;
        this.openLink = openLink;
        workKeeper = new WorkKeeper(workbook, threads.saving(), Platform::runLater, this::notify);
        desk =
                new DeskModel(
                        LessonReader::read, runner, threads.work(), Platform::runLater, workKeeper);
        printer =
                new HandoutPrinter(
                        threads.work(),
                        Platform::runLater,
                        () -> new BenchRunner(threads.work(), () -> settings.preferences().get()),
                        this::notify);
        batches = new BatchStore(workbook, threads.saving(), Platform::runLater, desk::notify);
        new LessonFileWatcher(desk, threads.saving(), Platform::runLater);
        desk.batches().keepOn(batches);
        settings.preferences().addListener((value, was, is) -> changed(was, is));
        workKeeper
                .settings()
                .follow(settings.preferences().get(), both -> settings.change(all -> both));
        workKeeper.whenTakenOver(() -> batches.readAgain(desk.batches()));
        stage.getScene().setRoot(view(Optional.empty()));
        stage.focusedProperty().addListener(value -> workKeeper.tryAgain());
    }

    private void notify(String words) {
        desk.notify(words);
    }

    private DeskView view(Optional<DeskView> former) {
        Words.show(settings.preferences().get().language().locale());
        FileDialogs dialogs = new FileDialogs(stage, desk, workKeeper, printer);
        return new DeskView(
                desk,
                settings,
                new RenderContext(FigurePainter.STILL, threads.painting(), Platform::runLater),
                new AppActions(
                        dialogs::openFile,
                        openLink,
                        workKeeper::archive,
                        dialogs::handIn,
                        dialogs::handout,
                        () -> stage.setFullScreen(!stage.isFullScreen())),
                former);
    }

    /** Settings have changed: updates what depends on them. */
    private void changed(Preferences was, Preferences is) {
        workKeeper.settings().keep(is);
        if (!was.limits().equals(is.limits())) {
            renewBench.run();
        }
        if (!was.language().equals(is.language())) {
            DeskView former = (DeskView) stage.getScene().getRoot();
            former.close();
            stage.getScene().setRoot(view(Optional.of(former)));
        }
    }

    /** Opens a lesson, a folder or zip file of lessons, or a recipe file. */
    void open(Path file) {
        if (file.toString().endsWith(BatchStore.ENDING)) {
            desk.openBatches();
            batches.files().open(file, desk.batches());
        } else {
            desk.openFile(file);
        }
    }

    /** Logs an unexpected exception; the window stays open. */
    void broke(Throwable error) {
        LOG.log(System.Logger.Level.ERROR, "the window broke", error);
        desk.notify(Messages.of("desk.error"));
    }

    WorkKeeper workKeeper() {
        return workKeeper;
    }

    DeskModel desk() {
        return desk;
    }

    /** Saves everything. */
    @Override
    public void close() {
        workKeeper.takeOverAtLast();
        batches.close();
        workKeeper.close();
    }
}
