package coldwright.desk.model;

import coldwright.lesson.Lesson;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Function;
import java.util.function.Supplier;

/** The whole desk: the lessons at hand, the open one, and what there is to tell the learner. */
public final class DeskModel {
    private final Function<Path, Lesson> reader;
    private final RunQueue queue;
    private final Executor work;
    private final Executor window;
    private final TypeSize typeSize = new TypeSize();
    private final ObservableList<LessonModel> lessons = FXCollections.observableArrayList();
    private final ReadOnlyObjectWrapper<LessonModel> open = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyStringWrapper notice = new ReadOnlyStringWrapper("");

    /**
     * Makes a desk without lessons.
     *
     * @param reader reads a lesson file; faults are told in the lesson, never thrown
     * @param runner runs snippets
     * @param work a thread for reading files
     * @param window the window's thread
     */
    public DeskModel(Function<Path, Lesson> reader, Runner runner, Executor work, Executor window) {
        this.reader = reader;
        this.queue = new RunQueue(runner, window);
        this.work = work;
        this.window = window;
    }

    /**
     * Fetches the lessons that come with the program and opens the first.
     *
     * @param shelf gives them, on the working thread
     * @return completes when they stand on the desk
     */
    public CompletableFuture<Void> fetch(Supplier<List<Lesson>> shelf) {
        return CompletableFuture.supplyAsync(shelf, work)
                .handleAsync(
                        (found, trouble) -> {
                            if (trouble != null) {
                                notice.set("The lessons can't be read: " + Trouble.said(trouble));
                            } else {
                                put(found);
                            }
                            return null;
                        },
                        window);
    }

    private void put(List<Lesson> found) {
        found.forEach(lesson -> lessons.add(new LessonModel(lesson, queue, window)));
        if (open.get() == null && !lessons.isEmpty()) {
            open(lessons.get(0));
        }
        if (lessons.isEmpty()) {
            notice.set("No lesson came with the program; open a lesson file of your own.");
        }
    }

    /**
     * Opens a lesson file. One that can't be read is told in {@link #notice()} and leaves the open
     * lesson where it is.
     *
     * @param file a lesson file
     * @return completes when it is open or told
     */
    public CompletableFuture<Void> openFile(Path file) {
        return CompletableFuture.supplyAsync(() -> reader.apply(file), work)
                .handleAsync(
                        (lesson, trouble) -> {
                            if (trouble != null) {
                                notice.set("%s can't be read as a lesson.".formatted(file));
                            } else {
                                took(lesson);
                            }
                            return null;
                        },
                        window);
    }

    private void took(Lesson lesson) {
        if (lesson.steps().isEmpty()) {
            notice.set(
                    lesson.faults().isEmpty()
                            ? lesson.file() + " holds no lesson."
                            : lesson.faults().get(0).toString());
            return;
        }
        LessonModel model = new LessonModel(lesson, queue, window);
        for (int i = 0; i < lessons.size(); i++) {
            if (lessons.get(i).lesson().file().equals(lesson.file())) {
                model.takeEditsOf(lessons.get(i));
                lessons.set(i, model);
                open(model);
                return;
            }
        }
        lessons.add(model);
        open(model);
    }

    /**
     * Opens a lesson.
     *
     * @param lesson one of {@link #lessons()}
     */
    public void open(LessonModel lesson) {
        notice.set("");
        open.set(lesson);
    }

    /**
     * Tells the learner something.
     *
     * @param sentence what there is to tell
     */
    public void tell(String sentence) {
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
        return lessons;
    }

    /**
     * The open lesson.
     *
     * @return null before the first is read
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
