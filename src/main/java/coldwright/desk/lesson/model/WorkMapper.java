package coldwright.desk.lesson.model;

import coldwright.lesson.ExpectedAnswer;
import coldwright.lesson.Lesson;
import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.GivenPrediction;
import coldwright.workbook.work.LearnerAnswer;
import coldwright.workbook.work.LessonWork;
import coldwright.workbook.work.StepNames;
import coldwright.workbook.work.StepWork;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Maps between an open lesson and its saved work. */
public final class WorkMapper {
    private WorkMapper() {}

    /** The current work on a lesson, from its saved work: all that is worth saving. */
    public static LessonWork of(LessonModel lesson, LessonWork before) {
        LessonWork work = before;
        for (Map.Entry<String, StepModel> step : steps(lesson).entrySet()) {
            String name = step.getKey();
            work = work.withStep(of(step.getValue(), work.step(name)));
            if (step.getValue() == lesson.inSight().get()) {
                work = work.withInSight(name);
            }
        }
        return work;
    }

    private static StepWork of(StepModel step, StepWork before) {
        StepWork work = before.withRead(step.read()).withDone(step.done().get());
        for (int i = 0; i < step.snippets().size(); i++) {
            SnippetModel snippet = step.snippets().get(i);
            work = work.withSnippet(i, snippet.text().get(), snippet.snippet().code());
        }
        List<PredictionModel> predictions = step.predictions();
        for (int i = 0; i < predictions.size(); i++) {
            PredictionModel model = predictions.get(i);
            Optional<LearnerAnswer> said = answer(model);
            String question = model.prediction().question();
            work =
                    said.isPresent()
                            ? work.withPrediction(new GivenPrediction(i, question, said.get()))
                            : work.withoutPrediction(i);
        }
        return work;
    }

    private static Optional<LearnerAnswer> answer(PredictionModel model) {
        if (model.prediction().answer() instanceof ExpectedAnswer.Choice choice) {
            int chosen = model.chosen().get();
            return chosen == PredictionModel.NONE
                    ? Optional.empty()
                    : Optional.of(new LearnerAnswer.Choice(chosen, choice.choices().get(chosen)));
        }
        if (model.sketch().isPresent()) {
            return model.sketch()
                    .filter(drawn -> !drawn.points().isEmpty())
                    .map(drawn -> new LearnerAnswer.Curve(drawn.points()));
        }
        String typed = model.typed().get();
        return typed.isBlank() ? Optional.empty() : Optional.of(new LearnerAnswer.Typed(typed));
    }

    /** The work on a lesson that nobody has started. */
    public static LessonWork empty(LessonModel lesson) {
        Lesson read = lesson.lesson();
        return LessonWork.empty(
                lesson.key(),
                lesson.key().name() + ".md",
                read.title(),
                ContentHash.of(read.text()));
    }

    /**
     * Moves the work on a lesson to the lesson from its changed file, as far as it fits; gives what
     * fits.
     */
    public static LessonWork carryOver(LessonModel former, LessonWork before, LessonModel now) {
        Lesson read = now.lesson();
        LessonWork work = of(former, before).fittedTo(read, ContentHash.of(read.text()));
        restore(work, now);
        return work;
    }

    /** Restores saved work, fitted to the lesson's current text. */
    public static void restore(LessonWork work, LessonModel lesson) {
        if (work.changed().isAfter(Instant.EPOCH)) {
            lesson.wasUsed(work.changed());
        }
        steps(lesson)
                .forEach(
                        (name, step) -> {
                            restore(work.step(name), step);
                            if (step.number() > 0 && name.equals(work.inSight())) {
                                lesson.wasAt(step);
                            }
                        });
    }

    private static void restore(StepWork work, StepModel step) {
        for (int i = 0; i < step.snippets().size(); i++) {
            SnippetModel snippet = step.snippets().get(i);
            snippet.text().set(work.textOf(i, snippet.snippet().code()));
        }
        List<PredictionModel> predictions = step.predictions();
        for (int i = 0; i < predictions.size(); i++) {
            PredictionModel model = predictions.get(i);
            work.answer(i, model.prediction().question())
                    .ifPresent(learnerAnswer -> restore(learnerAnswer, model));
        }
        step.restore(work.read(), work.done());
    }

    /**
     * Updates an open lesson with work from another window, fitted to its text. Equal parts are
     * left alone, so that their results and marks stay.
     */
    public static void bringUpToDate(LessonWork work, LessonModel lesson) {
        steps(lesson)
                .forEach(
                        (name, step) -> {
                            StepWork is = work.step(name);
                            if (!of(step, is).equals(is)) {
                                clearWithdrawn(is, step);
                                restore(is, step);
                            }
                        });
    }

    /** Clears an answer that was withdrawn in the other window. */
    private static void clearWithdrawn(StepWork is, StepModel step) {
        List<PredictionModel> predictions = step.predictions();
        for (int i = 0; i < predictions.size(); i++) {
            if (answer(predictions.get(i)).isPresent()
                    && is.answer(i, predictions.get(i).prediction().question()).isEmpty()) {
                predictions.get(i).reset();
            }
        }
    }

    private static void restore(LearnerAnswer learnerAnswer, PredictionModel model) {
        if (learnerAnswer instanceof LearnerAnswer.Choice choice
                && model.prediction().answer() instanceof ExpectedAnswer.Choice asked) {
            choice.among(asked.choices()).ifPresent(model.chosen()::set);
        } else if (learnerAnswer instanceof LearnerAnswer.Typed typed) {
            model.typed().set(typed.text());
        } else if (learnerAnswer instanceof LearnerAnswer.Curve drawn) {
            model.sketch().ifPresent(sketch -> sketch.restore(drawn.points()));
        }
    }

    /** All steps by their names in saved work, the opening first. */
    private static Map<String, StepModel> steps(LessonModel lesson) {
        Map<String, StepModel> all = new LinkedHashMap<>();
        all.put(StepNames.OPENING, lesson.opening());
        List<String> names = StepNames.of(lesson.lesson());
        for (int i = 0; i < names.size(); i++) {
            all.put(names.get(i), lesson.steps().get(i));
        }
        return all;
    }
}
