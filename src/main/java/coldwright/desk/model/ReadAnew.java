package coldwright.desk.model;

import coldwright.lesson.Lesson;
import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.LessonWork;

import java.util.List;

/** What goes over from a lesson on the desk to the lesson that its changed file gives. */
final class ReadAnew {
    private final LessonModel former;
    private final LessonModel now;

    ReadAnew(LessonModel former, LessonModel now) {
        this.former = former;
        this.now = now;
    }

    /** What was done stays, where it still fits. */
    void takeWork() {
        Lesson old = former.lesson();
        Lesson read = now.lesson();
        LessonWork none =
                LessonWork.empty(
                        now.key(), now.key().name(), old.title(), ContentHash.of(old.text()));
        LessonWork work = Works.of(former, none);
        Works.restore(work.fittedTo(read, ContentHash.of(read.text())), now);
    }

    /** The step of the same title stays in sight, else that of the same number. */
    void stand() {
        StepModel was = former.inSight().get();
        if (was.number() >= 1) {
            List<StepModel> steps = now.steps();
            now.arrive(
                    steps.stream()
                            .filter(step -> step.title().equals(was.title()))
                            .findFirst()
                            .orElse(steps.get(Math.min(was.number(), steps.size()) - 1)));
        }
    }

    /**
     * What had run, or was about to, runs from the top; what still runs of the former is stopped.
     */
    void run() {
        int last = 0;
        for (int i = 0; i < former.snippets().size(); i++) {
            SnippetModel one = former.snippets().get(i);
            if (one.came().everFinished().get() || former.chain().awaits(one)) {
                last = Math.max(last, placeOf(one, i) + 1);
            }
        }
        former.chain().stop();
        if (now.gate().open().get()) {
            now.chain().run(now.snippets().subList(0, Math.min(last, now.snippets().size())));
        }
    }

    /** Where a snippet of the same author's text stands now, else the place it had. */
    private int placeOf(SnippetModel one, int place) {
        for (int i = 0; i < now.snippets().size(); i++) {
            if (now.snippets().get(i).snippet().code().equals(one.snippet().code())) {
                return i;
            }
        }
        return place;
    }
}
