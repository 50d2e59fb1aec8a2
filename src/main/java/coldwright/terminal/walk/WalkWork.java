package coldwright.terminal.walk;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.lesson.Lesson;
import coldwright.terminal.console.TerminalScreen;
import coldwright.text.DisplayText;
import coldwright.workbook.LoadedWork;
import coldwright.workbook.Saved;
import coldwright.workbook.Workbook;
import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.GivenPrediction;
import coldwright.workbook.work.LearnerAnswer;
import coldwright.workbook.work.LessonKey;
import coldwright.workbook.work.LessonWork;
import coldwright.workbook.work.StepNames;

import java.time.Instant;
import java.util.Optional;

/**
 * The work saved during a walk, the same as in the window. Each change is on the disk before the
 * walk continues, so that nothing is lost however it ends.
 */
public final class WalkWork {
    private final Optional<Workbook> workbook;
    private final TerminalScreen screen;
    private LessonWork work;
    private boolean reported;

    private WalkWork(Optional<Workbook> workbook, TerminalScreen screen, LessonWork work) {
        this.workbook = workbook;
        this.screen = screen;
        this.work = work;
    }

    /** Saves nothing, such as without a user. */
    public static WalkWork none(Lesson lesson, TerminalScreen screen) {
        return new WalkWork(
                Optional.empty(), screen, empty(lesson, LessonKey.ofCourse(lesson.title())));
    }

    /** The saved work on a lesson. */
    public static WalkWork in(
            Workbook workbook, Lesson lesson, LessonKey key, TerminalScreen screen) {
        workbook.notice().ifPresent(words -> report(screen, words));
        workbook.whenCopied(copied -> report(screen, text("copied", copied.what(), copied.copy())));
        LoadedWork<Optional<LessonWork>> loaded = workbook.load(key, lesson);
        loaded.messages().forEach(words -> report(screen, words));
        LessonWork work = loaded.value().orElseGet(() -> empty(lesson, key));
        return new WalkWork(Optional.of(workbook).filter(Workbook::keeps), screen, work);
    }

    private static void report(TerminalScreen screen, String words) {
        screen.warn(DisplayText.sentence(words));
    }

    private static LessonWork empty(Lesson lesson, LessonKey key) {
        return LessonWork.empty(
                key, key.name() + ".md", lesson.title(), ContentHash.of(lesson.text()));
    }

    /** The step where the learner stopped, from 0; empty at the beginning. */
    Optional<Integer> stoppedAt(Lesson lesson) {
        return Optional.of(StepNames.of(lesson).indexOf(work.inSight())).filter(at -> at > 0);
    }

    /** A snippet's text; the learner's own if there is one. */
    String textOf(String step, int index, String authorText) {
        return work.step(step).textOf(index, authorText);
    }

    void answered(String step, int index, String question, LearnerAnswer learnerAnswer) {
        keep(work.withPrediction(step, new GivenPrediction(index, question, learnerAnswer)));
    }

    void began(String step) {
        keep(work.withInSight(step));
    }

    /**
     * Ends a step. It is done if all of it ran and passed; a step done earlier stays done, unless a
     * check fails although nothing is changed.
     */
    void ended(String step, boolean holds, boolean changed) {
        boolean done = holds || changed && work.step(step).done();
        keep(work.withRead(step, true).withDone(step, done));
    }

    private void keep(LessonWork next) {
        work = next.changedAt(Instant.now());
        Optional<Saved<LessonWork>> saved = workbook.map(book -> book.keep(work));
        Optional<String> failure = saved.flatMap(Saved::failure);
        if (failure.isPresent() && !reported) {
            reported = true;
            report(screen, failure.get());
        }
        saved.filter(one -> one.failure().isEmpty())
                .ifPresent(
                        one -> {
                            work = one.value();
                            workbook.get().shows(work);
                        });
    }
}
