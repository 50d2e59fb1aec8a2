package coldwright.desk.model;

import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.run.RunContext;
import coldwright.desk.run.RunGate;
import coldwright.desk.run.RunQueue;
import coldwright.lesson.Lesson;
import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.LessonKey;

import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;

/** The lessons on the desk: those of the program, and those whose files were opened. */
public final class OpenLessons {
    private final RunQueue queue;
    private final Executor window;
    private final WorkStore workStore;

    /** Files whose author is the learner; forgotten when the program ends. */
    private final Set<String> written = new HashSet<>();

    private final ReadOnlyIntegerWrapper progress = new ReadOnlyIntegerWrapper();
    private final ObservableList<LessonModel> all = FXCollections.observableArrayList();

    OpenLessons(RunQueue queue, Executor window, WorkStore workStore) {
        this.queue = queue;
        this.window = window;
        this.workStore = workStore;
    }

    /** Adds a lesson that comes with the program. */
    void addFromProgram(Lesson lesson) {
        add(modelOf(lesson, LessonKey.ofCourse(lesson.name())));
    }

    LessonModel addFromFile(Lesson lesson) {
        return add(modelOf(lesson, LessonKey.ofFile(Path.of(lesson.file()))));
    }

    private LessonModel add(LessonModel model) {
        all.add(model);
        model.whenChanged(this::progressed);
        workStore.opened(model);
        return model;
    }

    /** Replaces a lesson by its file's new text, and moves the work to it. */
    LessonModel replace(LessonModel former, Lesson read) {
        LessonModel model = modelOf(read, LessonKey.ofFile(Path.of(read.file())));
        all.set(all.indexOf(former), model);
        model.whenChanged(this::progressed);
        workStore.replaced(former, model);
        return model;
    }

    private LessonModel modelOf(Lesson lesson, LessonKey key) {
        boolean isWritten = written.contains(lesson.file());
        RunGate gate =
                isWritten || workStore.agreed(ContentHash.of(lesson.text()))
                        ? RunGate.wide()
                        : RunGate.confined(lesson.asksForEverything());
        LessonModel model = new LessonModel(lesson, key, new RunContext(queue, window, gate));
        model.setWritten(isWritten);
        return model;
    }

    Optional<LessonModel> ofFile(String file) {
        return all.stream().filter(one -> one.lesson().file().equals(file)).findFirst();
    }

    /** A lesson that came with the program, by its file name without the ending. */
    public Optional<LessonModel> named(String name) {
        return all.stream().filter(one -> one.key().name().equals(name)).findFirst();
    }

    /**
     * The lesson to continue: the one used last, or the next one if that is done; empty if none was
     * used or all are done.
     */
    public Optional<LessonModel> started() {
        return all.stream()
                .filter(one -> one.lastUsed().isPresent())
                .max(Comparator.comparing(one -> one.lastUsed().get()))
                .flatMap(
                        last ->
                                all.stream()
                                        .skip(all.indexOf(last))
                                        .filter(one -> one.stepsDone() < one.steps().size())
                                        .findFirst());
    }

    /** The learner lets a lesson's snippets do everything, as long as its text stays the same. */
    public void agree(LessonModel lesson) {
        Lesson read = lesson.lesson();
        workStore.agree(ContentHash.of(read.text()), read.title());
        lesson.gate().unlock();
        lesson.arrive(lesson.inSight().get());
    }

    /**
     * The learner is a lesson's author: its snippets run however its file changes, until the
     * program ends.
     */
    public void agreeWhileWritten(LessonModel lesson) {
        written.add(lesson.lesson().file());
        lesson.setWritten(true);
        agree(lesson);
    }

    /**
     * The author has finished a lesson: its current text may run, and each later one asks again.
     */
    public void doneWriting(LessonModel lesson) {
        written.remove(lesson.lesson().file());
        lesson.setWritten(false);
    }

    private void progressed() {
        progress.set(progress.get() + 1);
    }

    /** Changes with the work in any lesson. */
    public ReadOnlyIntegerProperty progress() {
        return progress.getReadOnlyProperty();
    }

    ObservableList<LessonModel> all() {
        return all;
    }
}
