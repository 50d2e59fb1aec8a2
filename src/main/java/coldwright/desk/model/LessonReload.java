package coldwright.desk.model;

import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.SnippetModel;
import coldwright.desk.lesson.model.StepModel;

import java.util.List;
import java.util.Optional;

/**
 * Where a lesson goes on after its file has changed: the step in sight and what had run. The work
 * itself goes over by {@link WorkStore#replaced}.
 */
final class LessonReload {
    private final LessonModel former;
    private final LessonModel now;

    LessonReload(LessonModel former, LessonModel now) {
        this.former = former;
        this.now = now;
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
     * What a slip of the text kept from its end had run too: it runs again once that is mended. A
     * step is done again when it has run.
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
     * Where a snippet stands now: that of the same author's text, else that of the same step and
     * place in it, else that of the same place in the lesson.
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
