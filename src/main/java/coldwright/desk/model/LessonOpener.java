package coldwright.desk.model;

import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.run.ExceptionText;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonPack;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;

/** Opens lesson files, folders and zip files, and shows a notice for those that can't be read. */
final class LessonOpener {
    private final Function<Path, Lesson> reader;
    private final OpenLessons lessons;
    private final Executor work;
    private final Executor window;
    private final Consumer<String> notify;
    private final Consumer<String> busy;
    private final Consumer<LessonModel> open;

    /** Opens nothing yet; {@code busy} shows what is going on, empty at its end. */
    LessonOpener(
            Function<Path, Lesson> reader,
            OpenLessons lessons,
            Executor work,
            Executor window,
            Consumer<String> notify,
            Consumer<String> busy,
            Consumer<LessonModel> open) {
        this.reader = reader;
        this.lessons = lessons;
        this.work = work;
        this.window = window;
        this.notify = notify;
        this.busy = busy;
        this.open = open;
    }

    /** Shows that a file is being opened, then the lesson or the error. */
    CompletableFuture<Void> open(Path file) {
        busy.accept(opening(file));
        return CompletableFuture.supplyAsync(() -> read(file), work)
                .handleAsync(
                        (found, error) -> {
                            busy.accept("");
                            if (error == null) {
                                opened(found);
                            } else if (LessonPack.isOne(file)) {
                                notify.accept(ExceptionText.text(error));
                            } else {
                                notify.accept(Messages.of("desk.no-such-lesson", file));
                            }
                            return null;
                        },
                        window);
    }

    /** The notice while a file is being read. */
    static String opening(Path file) {
        Path name = file.getFileName();
        return Messages.of("desk.opening", name == null ? file : name);
    }

    private List<Lesson> read(Path file) {
        return LessonPack.isOne(file) ? LessonPack.of(file) : List.of(reader.apply(file));
    }

    /** A name in a zip file may be invalid on this system. */
    private void opened(List<Lesson> found) {
        try {
            add(found);
        } catch (InvalidPathException e) {
            notify.accept(Messages.of("desk.no-such-lesson", e.getInput()));
        }
    }

    private void add(List<Lesson> found) {
        List<Lesson> taught = found.stream().filter(one -> !one.steps().isEmpty()).toList();
        if (taught.isEmpty()) {
            notify.accept(noLessonMessage(found.get(0)));
            return;
        }
        open.accept(taught.stream().map(this::add).toList().get(0));
        found.stream()
                .filter(one -> one.steps().isEmpty())
                .findFirst()
                .ifPresent(
                        one -> notify.accept(Messages.of("desk.left-out", noLessonMessage(one))));
    }

    private LessonModel add(Lesson lesson) {
        return lessons.ofFile(lesson.file())
                .map(former -> lessons.replace(former, lesson))
                .orElseGet(() -> lessons.addFromFile(lesson));
    }

    /** Why a text without steps can't be opened. */
    static String noLessonMessage(Lesson lesson) {
        return lesson.faults().isEmpty()
                ? Messages.of("desk.empty-lesson", lesson.file())
                : lesson.faults().get(0).toString();
    }
}
