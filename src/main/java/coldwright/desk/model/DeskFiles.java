package coldwright.desk.model;

import coldwright.desk.say.Say;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonPack;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;

/** Opens lesson files and packs of them; what can't be read is told. */
final class DeskFiles {
    private final Function<Path, Lesson> reader;
    private final DeskLessons lessons;
    private final Executor work;
    private final Executor window;
    private final Consumer<String> tell;
    private final Consumer<LessonModel> open;

    /**
     * Opens nothing yet.
     *
     * @param reader reads a lesson file; faults are told in the lesson, never thrown
     * @param lessons takes the lessons
     * @param work a thread for reading
     * @param window the window's thread
     * @param tell tells the learner something
     * @param open shows a lesson
     */
    DeskFiles(
            Function<Path, Lesson> reader,
            DeskLessons lessons,
            Executor work,
            Executor window,
            Consumer<String> tell,
            Consumer<LessonModel> open) {
        this.reader = reader;
        this.lessons = lessons;
        this.work = work;
        this.window = window;
        this.tell = tell;
        this.open = open;
    }

    /** Says that a file is being opened, opens it, or says why it can't be. */
    CompletableFuture<Void> open(Path file) {
        tell.accept(opening(file));
        return CompletableFuture.supplyAsync(() -> read(file), work)
                .handleAsync(
                        (found, trouble) -> {
                            if (trouble == null) {
                                took(found);
                            } else if (LessonPack.isOne(file)) {
                                tell.accept(Trouble.said(trouble));
                            } else {
                                tell.accept(Say.of("desk.no-such-lesson", file));
                            }
                            return null;
                        },
                        window);
    }

    /** What is said while a file is being read. */
    static String opening(Path file) {
        Path name = file.getFileName();
        return Say.of("desk.opening", name == null ? file : name);
    }

    private List<Lesson> read(Path file) {
        return LessonPack.isOne(file) ? LessonPack.of(file) : List.of(reader.apply(file));
    }

    /** A name within a zip file may be none that this system can have. */
    private void took(List<Lesson> found) {
        try {
            lay(found);
        } catch (InvalidPathException e) {
            tell.accept(Say.of("desk.no-such-lesson", e.getInput()));
        }
    }

    private void lay(List<Lesson> found) {
        List<Lesson> taught = found.stream().filter(one -> !one.steps().isEmpty()).toList();
        if (taught.isEmpty()) {
            tell.accept(untaught(found.get(0)));
            return;
        }
        open.accept(taught.stream().map(this::lay).toList().get(0));
        found.stream()
                .filter(one -> one.steps().isEmpty())
                .findFirst()
                .ifPresent(one -> tell.accept(Say.of("desk.left-out", untaught(one))));
    }

    private LessonModel lay(Lesson lesson) {
        return lessons.ofFile(lesson.file())
                .map(former -> lessons.replace(former, lesson))
                .orElseGet(() -> lessons.layFromFile(lesson));
    }

    /** Why a text without steps can't be opened. */
    static String untaught(Lesson lesson) {
        return lesson.faults().isEmpty()
                ? Say.of("desk.empty-lesson", lesson.file())
                : lesson.faults().get(0).toString();
    }
}
