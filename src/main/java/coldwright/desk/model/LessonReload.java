package coldwright.desk.model;

import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.SnippetModel;
import coldwright.desk.lesson.model.StepModel;

import java.util.List;
import java.util.Optional;

/**
 * Continues a lesson after its file has changed: the step in sight, and the snippets that had run.
 * The work itself is moved by {@link WorkStore#replaced}.
 */
final class LessonReload {
    private final LessonModel former;
    private final LessonModel now;

    LessonReload(LessonModel former, LessonModel now) {
        this.former = former;
        this.now = now;
    }

    /** Keeps the step in sight: the one with the same title, or else the same number. */
    void keepStepInSight() {
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
     * Runs from the top all snippets that had run or were about to, and stops those of the former
     * lesson. A snippet that an error ended counts as run, so it runs again once the error is
     * fixed. A step is done again when it has run.
     */
    void run() {
        int last = 0;
        for (int i = 0; i < former.snippets().size(); i++) {
            SnippetModel one = former.snippets().get(i);
            if (one.wasRun() || former.chain().awaits(one)) {
                last = Math.max(last, placeOf(one, i) + 1);
            }
        }
        former.chain().stop();
        List<SnippetModel> again = now.snippets().subList(0, Math.min(last, now.snippets().size()));
        again.forEach(SnippetModel::runsAgain);
        if (now.gate().open().get()) {
            now.steps().forEach(step -> step.judgeAgain(again));
            now.chain().run(again);
        }
    }

    /**
     * Index of a snippet's counterpart: by the same author's text, or else the same step and index
     * in it, or else the same index in the lesson.
     */
    private int placeOf(SnippetModel one, int place) {
        for (int i = 0; i < now.snippets().size(); i++) {
            if (now.snippets().get(i).snippet().code().equals(one.snippet().code())) {
                return i;
            }
        }
        return inSameStep(one).map(now.snippets()::indexOf).orElse(place);
    }

    private Optional<SnippetModel> inSameStep(SnippetModel one) {
        return former.steps().stream()
                .filter(step -> step.snippets().contains(one))
                .flatMap(
                        was ->
                                now.steps().stream()
                                        .filter(step -> step.title().equals(was.title()))
                                        .flatMap(
                                                step ->
                                                        step.snippets().stream()
                                                                .skip(was.snippets().indexOf(one))
                                                                .limit(1)))
                .findFirst();
    }
}
