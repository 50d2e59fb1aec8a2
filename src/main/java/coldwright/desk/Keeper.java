package coldwright.desk;

import coldwright.desk.model.Keeping;
import coldwright.desk.model.LessonModel;
import coldwright.desk.model.Works;
import coldwright.desk.say.Say;
import coldwright.lesson.Lesson;
import coldwright.text.Written;
import coldwright.workbook.Loaded;
import coldwright.workbook.Saver;
import coldwright.workbook.Workbook;
import coldwright.workbook.settings.Agreements;
import coldwright.workbook.settings.Preferences;
import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.LessonKey;
import coldwright.workbook.work.LessonWork;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.ScheduledExecutorService;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Keeps what the learner does: brings it back when a lesson is opened and writes it soon after each
 * change. Used on the window's thread; reading and writing happen on another.
 */
final class Keeper implements Keeping, AutoCloseable {
    private final Workbook workbook;
    private final ScheduledExecutorService background;
    private final Executor window;
    private final Consumer<String> tell;
    private final Saver saver;
    private final Map<LessonModel, LessonWork> works = new HashMap<>();
    private Agreements agreements;

    /**
     * A keeper.
     *
     * @param workbook where things are kept
     * @param background a thread for reading and writing
     * @param window the window's thread
     * @param tell tells the learner something, on the window's thread, and never before this keeper
     *     is made
     */
    Keeper(
            Workbook workbook,
            ScheduledExecutorService background,
            Executor window,
            Consumer<String> tell) {
        this.workbook = workbook;
        this.background = background;
        this.window = window;
        this.tell = tell;
        this.saver = new Saver(workbook, background, words -> window.execute(() -> say(words)));
        Loaded<Agreements> loaded = workbook.agreements();
        agreements = loaded.value();
        Stream.concat(workbook.notice().stream(), loaded.messages().stream())
                .forEach(words -> window.execute(() -> say(words)));
    }

    private void say(String words) {
        tell.accept(Written.sentence(words));
    }

    @Override
    public void opened(LessonModel lesson) {
        Lesson read = lesson.lesson();
        if (read.text().isEmpty()) {
            return;
        }
        ContentHash hash = ContentHash.of(read.text());
        LessonKey key = lesson.key();
        CompletableFuture.supplyAsync(() -> workbook.load(key), background)
                .thenAcceptAsync(loaded -> took(lesson, loaded, key, hash), window)
                .exceptionally(
                        trouble -> {
                            window.execute(() -> say(Say.of("keep.unread", trouble.getMessage())));
                            return null;
                        });
    }

    @Override
    public void replaced(LessonModel former, LessonModel now) {
        LessonWork before = works.remove(former);
        if (before == null) {
            Keeping.super.replaced(former, now);
            return;
        }
        Lesson read = now.lesson();
        LessonWork work = Works.of(former, before).fittedTo(read, ContentHash.of(read.text()));
        Works.restore(work, now);
        works.put(now, work);
        now.whenChanged(() -> changed(now));
    }

    private void took(
            LessonModel lesson,
            Loaded<Optional<LessonWork>> loaded,
            LessonKey key,
            ContentHash hash) {
        Lesson read = lesson.lesson();
        String name = key.name() + ".md";
        LessonWork empty = LessonWork.empty(key, name, read.title(), hash);
        LessonWork work = loaded.value().map(kept -> kept.fittedTo(read, hash)).orElse(empty);
        loaded.messages().forEach(this::say);
        Works.restore(work, lesson);
        works.put(lesson, work);
        lesson.whenChanged(() -> changed(lesson));
    }

    private void changed(LessonModel lesson) {
        if (!works.containsKey(lesson)) {
            return;
        }
        LessonWork work = Works.of(lesson, works.get(lesson));
        works.put(lesson, work);
        saver.changed(work);
    }

    /** The work on a lesson as it stands. */
    LessonWork workOn(LessonModel lesson) {
        Lesson read = lesson.lesson();
        LessonKey key = lesson.key();
        LessonWork before =
                works.getOrDefault(
                        lesson,
                        LessonWork.empty(
                                key,
                                key.name() + ".md",
                                read.title(),
                                ContentHash.of(read.text())));
        return Works.of(lesson, before);
    }

    /** Tries once more to keep things, if another window kept them until now. */
    void tryAgain() {
        if (!workbook.keeps()) {
            CompletableFuture.supplyAsync(workbook::tryAgain, background)
                    .thenAcceptAsync(
                            notice -> {
                                if (notice.isEmpty()) {
                                    takeOver();
                                }
                            },
                            window);
        }
    }

    /** From now on this window keeps the workbook; what stands here counts. */
    private void takeOver() {
        works.forEach(
                (lesson, work) ->
                        CompletableFuture.runAsync(() -> workbook.load(work.key()), background)
                                .thenRunAsync(() -> changed(lesson), window));
        say(Say.of("keep.taken-over"));
    }

    /** Keeps the preferences. */
    void keep(Preferences preferences) {
        background.execute(
                () ->
                        workbook.save(preferences)
                                .ifPresent(words -> window.execute(() -> say(words))));
    }

    @Override
    public boolean agreed(ContentHash hash) {
        return agreements.agreed(hash);
    }

    @Override
    public void agree(ContentHash hash, String name) {
        agreements = agreements.agree(hash, name);
        Agreements now = agreements;
        background.execute(
                () -> workbook.save(now).ifPresent(words -> window.execute(() -> say(words))));
    }

    /** Moves all that was kept into a folder of its own; says what came of it. */
    void putAway() {
        CompletableFuture.supplyAsync(workbook::clear, background)
                .thenAcceptAsync(
                        put -> {
                            put.message().ifPresent(this::say);
                            put.folder().ifPresent(folder -> say(Say.of("keep.put-away", folder)));
                        },
                        window);
    }

    @Override
    public void close() {
        saver.close();
        workbook.close();
    }
}
