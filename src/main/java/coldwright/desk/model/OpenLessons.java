package coldwright.desk.model;

import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.run.RunContext;
import coldwright.desk.run.RunQueue;
import coldwright.lesson.Lesson;
import coldwright.workbook.work.LessonKey;

import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.concurrent.Executor;

/** The lessons on the desk: those of the program, and those whose files were opened. */
final class OpenLessons {
    private final RunQueue queue;
    private final Executor window;
    private final WorkStore workStore;
    private final RunPermissions permissions;
    private final ReadOnlyIntegerWrapper progress = new ReadOnlyIntegerWrapper();
    private final ObservableList<LessonModel> all = FXCollections.observableArrayList();

    /**
     * None yet.
     *
     * @param queue runs their snippets
     * @param window the window's thread
     * @param workStore stores the learner's work
     */
    OpenLessons(RunQueue queue, Executor window, WorkStore workStore) {
        this.queue = queue;
        this.window = window;
        this.workStore = workStore;
        this.permissions = new RunPermissions(workStore);
    }

    /** Adds a lesson that comes with the program: its snippets may run. */
    void addFromProgram(Lesson lesson) {
        permissions.comesWithTheProgram(lesson);
        add(new LessonModel(lesson, queue, window));
    }

    /** Adds a lesson that was read from a file. */
    LessonModel addFromFile(Lesson lesson) {
        return add(modelOf(lesson));
    }

    private LessonModel add(LessonModel model) {
        all.add(model);
        model.whenChanged(this::progressed);
        workStore.opened(model);
        return model;
    }

    /** Replaces a lesson by its file's new text, and moves the work to it. */
    LessonModel replace(LessonModel former, Lesson read) {
        LessonModel model = modelOf(read);
        all.set(all.indexOf(former), model);
        model.whenChanged(this::progressed);
        workStore.replaced(former, model);
        return model;
    }

    private LessonModel modelOf(Lesson lesson) {
        LessonKey key = LessonKey.ofFile(Path.of(lesson.file()));
        LessonModel model =
                new LessonModel(
                        lesson, key, new RunContext(queue, window, permissions.gateOf(lesson)));
        model.setWritten(permissions.isWritten(lesson));
        return model;
    }

    /** The lesson that was read from a file. */
    Optional<LessonModel> ofFile(String file) {
        return all.stream().filter(one -> one.lesson().file().equals(file)).findFirst();
    }

    /** The lesson used last or, if that is done, the first after it that isn't. */
    Optional<LessonModel> started() {
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

    /** The learner agrees to run a lesson's snippets. */
    void agree(LessonModel lesson) {
        permissions.agree(lesson.lesson());
        lesson.gate().unlock();
        lesson.arrive(lesson.inSight().get());
    }

    /** The learner is a lesson's author: it may run however its file changes. */
    void agreeWhileWritten(LessonModel lesson) {
        permissions.whileWritten(lesson.lesson());
        lesson.setWritten(true);
        agree(lesson);
    }

    /** The author has finished: the next text asks again. */
    void doneWriting(LessonModel lesson) {
        permissions.doneWriting(lesson.lesson());
        lesson.setWritten(false);
    }

    private void progressed() {
        progress.set(progress.get() + 1);
    }

    /** Changes with the work in any lesson. */
    ReadOnlyIntegerProperty progress() {
        return progress.getReadOnlyProperty();
    }

    ObservableList<LessonModel> all() {
        return all;
    }
}
