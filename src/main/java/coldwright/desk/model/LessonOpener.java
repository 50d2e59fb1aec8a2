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
import java.util.function.Function;

/** Opens lesson files, folders and zip files, and shows a notice for those that can't be read. */
final class LessonOpener {
    private final Function<Path, Lesson> reader;
    private final OpenLessons lessons;
    private final Executor work;
    private final Executor window;
    private final DeskModel desk;

    LessonOpener(
            DeskModel desk,
            Function<Path, Lesson> reader,
            OpenLessons lessons,
            Executor work,
            Executor window) {
        this.desk = desk;
        this.reader = reader;
        this.lessons = lessons;
        this.work = work;
        this.window = window;
    }

    /** Shows that a file is being opened, then the lesson or the error. */
    CompletableFuture<Void> open(Path file) {
        desk.announce(file);
        return CompletableFuture.supplyAsync(() -> read(file), work)
                .handleAsync(
                        (found, error) -> {
                            desk.ready();
                            if (error == null) {
                                opened(found);
                            } else if (LessonPack.isOne(file)) {
                                desk.notify(ExceptionText.text(error));
                            } else {
                                desk.notify(Messages.of("desk.no-such-lesson", file));
                            }
                            return null;
                        },
                        window);
    }

    private List<Lesson> read(Path file) {
        return LessonPack.isOne(file) ? LessonPack.of(file) : List.of(reader.apply(file));
    }

    /** A name in a zip file may be invalid on this system. */
    private void opened(List<Lesson> found) {
        try {
            add(found);
        } catch (InvalidPathException e) {
            desk.notify(Messages.of("desk.no-such-lesson", e.getInput()));
        }
    }

    private void add(List<Lesson> found) {
        List<Lesson> taught = found.stream().filter(one -> !one.steps().isEmpty()).toList();
        if (taught.isEmpty()) {
            desk.notify(noLessonMessage(found.get(0)));
            return;
        }
        desk.open(taught.stream().map(this::add).toList().get(0));
        found.stream()
                .filter(one -> one.steps().isEmpty())
                .findFirst()
                .ifPresent(one -> desk.notify(Messages.of("desk.left-out", noLessonMessage(one))));
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
