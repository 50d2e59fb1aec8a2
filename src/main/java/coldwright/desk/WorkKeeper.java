package coldwright.desk;

import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.WorkMapper;
import coldwright.desk.messages.Messages;
import coldwright.desk.model.WorkStore;
import coldwright.lesson.Lesson;
import coldwright.text.DisplayText;
import coldwright.workbook.Copied;
import coldwright.workbook.DelayedSaver;
import coldwright.workbook.LoadedWork;
import coldwright.workbook.Workbook;
import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.LessonKey;
import coldwright.workbook.work.LessonWork;
import coldwright.workbook.work.WorkMerge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * Saves the learner's work: restores it when a lesson is opened and writes it soon after each
 * change. Used on the window's thread; reading and writing happen on another.
 */
final class WorkKeeper implements WorkStore, AutoCloseable {
    /** More sentences than these would fill the page. */
    private static final int MOST_COPIES_SAID = 3;

    /** Delay before the next try to save, ms. */
    private static final long BETWEEN_TRIES_MS = 1_000;

    private final Workbook workbook;
    private final ScheduledExecutorService background;
    private final Executor window;
    private final Consumer<String> notify;
    private final DelayedSaver delayedSaver;
    private final SettingsKeeper settings;
    private final Map<LessonModel, LessonWork> works = new HashMap<>();
    private final List<Runnable> whenTakenOver = new ArrayList<>();
    private final List<Copied> copies = new ArrayList<>();
    private boolean bringingBack;
    private boolean triesLater;

    /**
     * Saves work in a workbook; {@code notify} shows a sentence on the window's thread, never
     * during construction.
     */
    WorkKeeper(
            Workbook workbook,
            ScheduledExecutorService background,
            Executor window,
            Consumer<String> notify) {
        this.workbook = workbook;
        this.background = background;
        this.window = window;
        this.notify = notify;
        this.delayedSaver =
                new DelayedSaver(
                        workbook,
                        background,
                        words -> window.execute(() -> say(words)),
                        (given, saved) -> window.execute(() -> settle(given, saved)));
        workbook.whenCopied(copied -> window.execute(() -> say(copied)));
        workbook.notice().ifPresent(words -> window.execute(() -> say(words)));
        settings = new SettingsKeeper(workbook, background, window, this::say);
    }

    private void say(String words) {
        notify.accept(DisplayText.sentence(words));
    }

    /** Shows several copies made in one takeover together, so that none is missed. */
    private void say(Copied copied) {
        copies.add(copied);
        say(
                copies.stream()
                        .skip(Math.max(0, copies.size() - MOST_COPIES_SAID))
                        .map(one -> Messages.of("work.copied", one.what(), one.copy()))
                        .collect(Collectors.joining(" ")));
    }

    @Override
    public void opened(LessonModel lesson) {
        Lesson read = lesson.lesson();
        if (read.text().isEmpty()) {
            return;
        }
        LessonKey key = lesson.key();
        CompletableFuture.supplyAsync(() -> workbook.load(key, read), background)
                .thenAcceptAsync(loaded -> workTaken(lesson, loaded), window)
                .exceptionally(
                        error -> {
                            window.execute(
                                    () -> say(Messages.of("work.unread", error.getMessage())));
                            return null;
                        });
    }

    @Override
    public void replaced(LessonModel former, LessonModel now) {
        LessonWork before = works.remove(former);
        if (before == null) {
            WorkStore.super.replaced(former, now);
            return;
        }
        works.put(now, WorkMapper.carryOver(former, before, now));
        background.execute(() -> workbook.fit(now.key(), now.lesson()));
        now.whenChanged(() -> changed(now));
    }

    private void workTaken(LessonModel lesson, LoadedWork<Optional<LessonWork>> loaded) {
        loaded.messages().forEach(this::say);
        LessonWork work = loaded.value().orElseGet(() -> WorkMapper.empty(lesson));
        WorkMapper.restore(work, lesson);
        LessonWork shown = WorkMapper.of(lesson, work);
        works.put(lesson, shown);
        background.execute(() -> workbook.shows(shown));
        lesson.whenChanged(() -> changed(lesson));
    }

    private void changed(LessonModel lesson) {
        if (!works.containsKey(lesson) || bringingBack) {
            return;
        }
        LessonWork work = WorkMapper.of(lesson, works.get(lesson));
        works.put(lesson, work);
        delayedSaver.changed(work);
        if (!workbook.keeps() && !triesLater && !background.isShutdown()) {
            triesLater = true;
            background.schedule(
                    () -> window.execute(this::tryAtLast), BETWEEN_TRIES_MS, TimeUnit.MILLISECONDS);
        }
    }

    /** Tries soon after a change, because no event shows that the other window has closed. */
    private void tryAtLast() {
        triesLater = false;
        tryAgain();
    }

    /** Shows another window's changes in the saved work, wherever this page is unchanged. */
    private void settle(LessonWork given, LessonWork saved) {
        works.keySet().stream()
                .filter(lesson -> lesson.key().equals(given.key()))
                .findFirst()
                .ifPresent(lesson -> settle(lesson, given, saved));
    }

    private void settle(LessonModel lesson, LessonWork given, LessonWork saved) {
        LessonWork now = WorkMapper.of(lesson, works.get(lesson));
        LessonWork both = WorkMerge.of(given, now, saved).value().withInSight(now.inSight());
        bringingBack = true;
        try {
            WorkMapper.bringUpToDate(both, lesson);
        } finally {
            bringingBack = false;
        }
        LessonWork shown = WorkMapper.of(lesson, both);
        works.put(lesson, shown);
        if (!shown.steps().equals(now.steps())) {
            delayedSaver.changed(shown);
            background.execute(() -> workbook.shows(shown));
        }
    }

    /** The current work on a lesson. */
    LessonWork workOn(LessonModel lesson) {
        LessonWork before = works.get(lesson);
        return WorkMapper.of(lesson, before == null ? WorkMapper.empty(lesson) : before);
    }

    /** Tries again to save, if another window had the workbook until now. */
    void tryAgain() {
        if (!workbook.keeps()) {
            CompletableFuture.supplyAsync(this::takes, background)
                    .thenAcceptAsync(
                            taken -> {
                                if (taken) {
                                    takeOver();
                                }
                            },
                            window);
        }
    }

    /** Whether this try was the first that gave this window the workbook. */
    private boolean takes() {
        return !workbook.keeps() && workbook.tryAgain().isEmpty();
    }

    /**
     * This window saves the workbook from now on. Saving every lesson, changed or not, merges it
     * with what the other window wrote.
     */
    private void takeOver() {
        copies.clear();
        say(Messages.of("work.taken-over"));
        saveAll();
        settings.keepAll();
        whenTakenOver.forEach(Runnable::run);
    }

    /** Runs an action on the window's thread once this window has taken over another's folder. */
    void whenTakenOver(Runnable action) {
        whenTakenOver.add(action);
    }

    SettingsKeeper settings() {
        return settings;
    }

    @Override
    public boolean agreed(ContentHash hash) {
        return settings.agreed(hash);
    }

    @Override
    public void agree(ContentHash hash, String name) {
        settings.agree(hash, name);
    }

    /** Moves all saved work into a folder of its own and shows the result. */
    void archive() {
        CompletableFuture.supplyAsync(workbook::clear, background)
                .thenAcceptAsync(
                        put -> {
                            put.failure().ifPresent(this::say);
                            put.value()
                                    .ifPresent(folder -> say(Messages.of("work.archived", folder)));
                        },
                        window);
    }

    /** The window is closing: saves what it couldn't save before, if the other window is gone. */
    void takeOverAtLast() {
        if (takes()) {
            saveAll();
        }
    }

    /** Saves all changes and waits for it. */
    void flush() {
        delayedSaver.flush();
    }

    private void saveAll() {
        works.replaceAll(WorkMapper::of);
        works.values().forEach(delayedSaver::changed);
    }

    @Override
    public void close() {
        takeOverAtLast();
        delayedSaver.close();
        settings.close();
        workbook.close();
    }
}
