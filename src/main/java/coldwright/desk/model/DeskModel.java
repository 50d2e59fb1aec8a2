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
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Function;
import java.util.function.Supplier;

/** The whole desk: the lessons at hand, the open one, and what there is to tell the learner. */
public final class DeskModel {
    private final Function<Path, Lesson> reader;
    private final Executor work;
    private final Executor window;
    private final BatchesModel batches;
    private final TypeSize typeSize = new TypeSize();
    private final OpenLessons lessons;
    private final LessonOpener files;
    private final ReadOnlyObjectWrapper<LessonModel> open = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<ShownPage> place =
            new ReadOnlyObjectWrapper<>(ShownPage.HOME);
    private final ReadOnlyStringWrapper notice = new ReadOnlyStringWrapper("");

    /**
     * Makes a desk without lessons.
     *
     * @param reader reads a lesson file; faults are told in the lesson, never thrown
     * @param runner runs snippets
     * @param work a thread for reading files
     * @param window the window's thread
     * @param workStore what keeps the learner's work
     */
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
        this.files = new LessonOpener(reader, lessons, work, window, notice::set, this::open);
    }

    /**
     * Fetches the lessons that come with the program.
     *
     * @param shelf gives them, on the working thread
     * @return completes when they stand on the desk
     */
    public CompletableFuture<Void> fetch(Supplier<List<Lesson>> shelf) {
        return CompletableFuture.supplyAsync(shelf, work)
                .handleAsync(
                        (found, trouble) -> {
                            if (trouble != null) {
                                notice.set(Messages.of("desk.unread", ExceptionText.text(trouble)));
                            } else {
                                put(found);
                            }
                            return null;
                        },
                        window);
    }

    private void put(List<Lesson> found) {
        found.forEach(lessons::layFromProgram);
        if (lessons.all().isEmpty()) {
            notice.set(Messages.of("desk.no-lesson"));
        }
    }

    /**
     * Opens a lesson file, or a pack: all its lessons lie on the desk then, and its first is open.
     * What can't be read is told in {@link #notice()} and leaves the open lesson where it is.
     *
     * @param file a lesson file, or a folder or zip file of several
     * @return completes when it is open or told
     */
    public CompletableFuture<Void> openFile(Path file) {
        return files.open(file);
    }

    /**
     * Opens a lesson that the program has just written itself: it needs nobody's leave to run.
     *
     * @param file the lesson's file
     * @return completes when its page is open
     */
    public CompletableFuture<Void> openOwn(Path file) {
        return openFile(file).thenRun(() -> lessons.ofFile(file.toString()).ifPresent(this::agree));
    }

    /**
     * Says that a file will be opened as soon as what comes before is done.
     *
     * @param file a lesson's, a pack's or a batch's
     */
    public void announce(Path file) {
        notice.set(LessonOpener.opening(file));
    }

    /**
     * Reads a lesson that lies on the desk again because its file has changed. The page stays at
     * its step, and what had run runs again. A text that can't be read for the moment is told and
     * leaves the lesson as it was.
     *
     * @param file a lesson's file
     * @return completes when the page shows it
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
        LessonReload anew = new LessonReload(former, model);
        anew.stand();
        notice.set("");
        if (seen) {
            open.set(model);
        }
        anew.run();
    }

    /**
     * The learner agrees that a lesson's snippets run; kept for as long as its text stays the same.
     *
     * @param lesson one that did not come with the program
     */
    public void agree(LessonModel lesson) {
        lessons.agree(lesson);
    }

    /**
     * The learner is the lesson's author: its snippets run however its file is changed, until the
     * program ends.
     *
     * @param lesson one that did not come with the program
     */
    public void agreeWhileWritten(LessonModel lesson) {
        lessons.agreeWhileWritten(lesson);
    }

    /**
     * The author has done with a lesson: its text runs as it is, and each later one asks again.
     *
     * @param lesson one of {@link #agreeWhileWritten}
     */
    public void doneWriting(LessonModel lesson) {
        lessons.doneWriting(lesson);
    }

    private void turnTo(ShownPage one) {
        notice.set("");
        place.set(one);
    }

    /** Shows the home page. */
    public void goHome() {
        turnTo(ShownPage.HOME);
    }

    /** Lays the open lesson out for a room, or back on the page; nothing if none is open. */
    public void toggleClassroom() {
        if (open.get() != null) {
            turnTo(place.get() == ShownPage.CLASSROOM ? ShownPage.LESSON : ShownPage.CLASSROOM);
        }
    }

    /** Shows the cook's own batches; the first time with one to change. */
    public void openBatches() {
        if (batches.batches().isEmpty()) {
            batches.startBatch(Messages.of("batch.first-name"));
        }
        turnTo(ShownPage.BATCH);
    }

    /** The cook's own batches. @return none at first */
    public BatchesModel batches() {
        return batches;
    }

    /** Shows the kitchen trials that need no machine. */
    public void openTrials() {
        turnTo(ShownPage.TRIALS);
    }

    /** Shows the settings. */
    public void openSettings() {
        turnTo(ShownPage.SETTINGS);
    }

    /**
     * The lesson to go on with: the one that was left in the middle.
     *
     * @return the last one with something done and something left; empty if there is none
     */
    public Optional<LessonModel> startedLesson() {
        return lessons.started();
    }

    /**
     * What the page shows.
     *
     * @return home, the open lesson or the settings
     */
    public ReadOnlyObjectProperty<ShownPage> place() {
        return place.getReadOnlyProperty();
    }

    /**
     * Opens a lesson.
     *
     * @param lesson one of {@link #lessons()}
     */
    public void open(LessonModel lesson) {
        notice.set("");
        open.set(lesson);
        place.set(ShownPage.LESSON);
    }

    /**
     * Tells the learner something.
     *
     * @param sentence what there is to tell
     */
    public void notify(String sentence) {
        notice.set(sentence);
    }

    /** Takes the notice away. */
    public void dismissNotice() {
        notice.set("");
    }

    /**
     * The lessons at hand.
     *
     * @return those of the program, then the learner's own
     */
    public ObservableList<LessonModel> lessons() {
        return lessons.all();
    }

    /**
     * The open lesson.
     *
     * @return null before the first was opened
     */
    public ReadOnlyObjectProperty<LessonModel> open() {
        return open.getReadOnlyProperty();
    }

    /**
     * What there is to tell the learner.
     *
     * @return a sentence; empty if nothing
     */
    public ReadOnlyStringProperty notice() {
        return notice.getReadOnlyProperty();
    }

    /**
     * The type's size.
     *
     * @return the size, to be changed by its own commands
     */
    public TypeSize typeSize() {
        return typeSize;
    }
}
