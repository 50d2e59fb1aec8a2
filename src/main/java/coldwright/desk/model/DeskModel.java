package coldwright.desk.model;

import coldwright.desk.batch.model.BatchesModel;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.run.ExceptionText;
import coldwright.desk.run.RunQueue;
import coldwright.desk.run.SnippetRunner;
import coldwright.lesson.Lesson;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.ObservableList;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Function;
import java.util.function.Supplier;

/** The model of the window: all lessons, the open one, the page shown, and the notice. */
public final class DeskModel {
    private final Function<Path, Lesson> reader;
    private final Executor work;
    private final Executor window;
    private final BatchesModel batches;
    private final OpenLessons lessons;
    private final LessonOpener files;
    private final ReadOnlyObjectWrapper<LessonModel> open = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<ShownPage> place =
            new ReadOnlyObjectWrapper<>(ShownPage.HOME);
    private final ReadOnlyStringWrapper notice = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper busy = new ReadOnlyStringWrapper("");
    private ShownPage beforeGlossary = ShownPage.HOME;
    private String wantedTerm = "";

    /** A desk without lessons; errors of {@code reader} are shown in the lesson, never thrown. */
    public DeskModel(
            Function<Path, Lesson> reader,
            SnippetRunner runner,
            Executor work,
            Executor window,
            WorkStore workStore) {
        this.reader = reader;
        this.lessons = new OpenLessons(new RunQueue(runner, window), window, workStore);
        this.work = work;
        this.window = window;
        this.batches = new BatchesModel(work, window);
        this.files = new LessonOpener(this, reader, lessons, work, window);
    }

    /** Loads the lessons that come with the program, on the working thread. */
    public CompletableFuture<Void> fetch(Supplier<List<Lesson>> shelf) {
        return CompletableFuture.supplyAsync(shelf, work)
                .handleAsync(
                        (found, error) -> {
                            if (error != null) {
                                notice.set(Messages.of("desk.unread", ExceptionText.text(error)));
                            } else {
                                put(found);
                            }
                            return null;
                        },
                        window);
    }

    private void put(List<Lesson> found) {
        found.forEach(lessons::addFromProgram);
        if (lessons.all().isEmpty()) {
            notice.set(Messages.of("desk.no-lesson"));
        }
    }

    /**
     * Opens a lesson file, or all lessons of a folder or zip file, and shows the first. An error is
     * shown in {@link #notice()} and the open lesson stays.
     */
    public CompletableFuture<Void> openFile(Path file) {
        return files.open(file);
    }

    /** Opens a lesson that the program has just written itself, so it may run without consent. */
    public CompletableFuture<Void> openOwn(Path file) {
        return openFile(file)
                .thenRun(() -> lessons.ofFile(file.toString()).ifPresent(lessons::agree));
    }

    /** Announces that a file will be opened as soon as earlier work is done. */
    public void announce(Path file) {
        Path name = file.getFileName();
        busy.set(Messages.of("desk.opening", name == null ? file : name));
    }

    /** Nothing is being opened any more. */
    void ready() {
        busy.set("");
    }

    /**
     * Reads an open lesson again because its file has changed. The page stays at its step, and
     * snippets that had run run again. If the text can't be read now, a notice says so and the
     * lesson stays as it was.
     */
    public CompletableFuture<Void> refresh(Path file) {
        return CompletableFuture.supplyAsync(() -> reader.apply(file), work)
                .thenAcceptAsync(
                        lesson ->
                                lessons.ofFile(lesson.file())
                                        .filter(was -> !was.lesson().text().equals(lesson.text()))
                                        .ifPresent(was -> refreshed(was, lesson)),
                        window);
    }

    private void refreshed(LessonModel former, Lesson lesson) {
        if (lesson.steps().isEmpty()) {
            notice.set(LessonOpener.noLessonMessage(lesson));
            return;
        }
        boolean seen = open.get() == former;
        LessonModel model = lessons.replace(former, lesson);
        LessonReload reload = new LessonReload(former, model);
        reload.keepStepInSight();
        notice.set("");
        if (seen) {
            open.set(model);
        }
        reload.run();
    }

    private void turnTo(ShownPage one) {
        notice.set("");
        busy.set("");
        place.set(one);
    }

    public void goHome() {
        turnTo(ShownPage.HOME);
    }

    /** Switches the open lesson to classroom view or back; ignored if none is open. */
    public void toggleClassroom() {
        if (open.get() != null) {
            turnTo(place.get() == ShownPage.CLASSROOM ? ShownPage.LESSON : ShownPage.CLASSROOM);
        }
    }

    /** Shows the cook's own batches; the first time it adds one to change. */
    public void openBatches() {
        if (batches.batches().isEmpty()) {
            batches.startBatch(Messages.of("batch.first-name"));
        }
        turnTo(ShownPage.BATCH);
    }

    /** The cook's own batches; initially empty. */
    public BatchesModel batches() {
        return batches;
    }

    /** Shows the kitchen trials that need no machine. */
    public void openTrials() {
        turnTo(ShownPage.TRIALS);
    }

    /** Shows the glossary and searches it for a term; empty for all. */
    public void openGlossary(String term) {
        wantedTerm = term;
        if (place.get() != ShownPage.GLOSSARY) {
            beforeGlossary = place.get();
        }
        turnTo(ShownPage.GLOSSARY);
    }

    /** Shows the page from which the glossary was opened. */
    public void leaveGlossary() {
        turnTo(beforeGlossary);
    }

    /** The term that the glossary searches for at first; empty for all. */
    public String wantedTerm() {
        return wantedTerm;
    }

    public void openSettings() {
        turnTo(ShownPage.SETTINGS);
    }

    public ReadOnlyObjectProperty<ShownPage> place() {
        return place.getReadOnlyProperty();
    }

    public void open(LessonModel lesson) {
        lesson.use();
        open.set(lesson);
        turnTo(ShownPage.LESSON);
    }

    /** Shows the learner a notice. */
    public void notify(String sentence) {
        notice.set(sentence);
    }

    public void dismissNotice() {
        notice.set("");
    }

    /** The lessons with what they may do, and which one to continue. */
    public OpenLessons openLessons() {
        return lessons;
    }

    /** All lessons: those of the program, then the learner's own. */
    public ObservableList<LessonModel> lessons() {
        return lessons.all();
    }

    /** The open lesson; null before the first was opened. */
    public ReadOnlyObjectProperty<LessonModel> open() {
        return open.getReadOnlyProperty();
    }

    /** What is going on, such as opening a file, in one sentence; empty for nothing. */
    public ReadOnlyStringProperty busy() {
        return busy.getReadOnlyProperty();
    }

    /** The current notice, in one sentence; empty if there is none. */
    public ReadOnlyStringProperty notice() {
        return notice.getReadOnlyProperty();
    }
}
