package coldwright.workbook.work;

import coldwright.lesson.LessonPart;
import coldwright.lesson.PartsByKind;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds renamed steps by the questions answered in them. */
final class RenamedSteps {
    private RenamedSteps() {}

    /**
     * Renames work to the current titles of its steps: a missing step with answers gets the name of
     * the first step without work that asks all of these questions.
     */
    static List<StepWork> named(List<StepWork> steps, Map<String, List<LessonPart>> parts) {
        Set<String> taken = new HashSet<>();
        steps.forEach(step -> taken.add(step.title()));
        return steps.stream()
                .map(
                        step ->
                                parts.containsKey(step.title()) || step.predictions().isEmpty()
                                        ? step
                                        : named(step, parts, taken))
                .toList();
    }

    private static StepWork named(
            StepWork step, Map<String, List<LessonPart>> parts, Set<String> taken) {
        List<String> answered = step.predictions().stream().map(GivenPrediction::question).toList();
        return parts.entrySet().stream()
                .filter(one -> !taken.contains(one.getKey()))
                .filter(one -> questions(one.getValue()).containsAll(answered))
                .findFirst()
                .map(Map.Entry::getKey)
                .filter(taken::add)
                .map(step::titled)
                .orElse(step);
    }

    /** The questions of a step, in order. */
    static List<String> questions(List<LessonPart> parts) {
        return PartsByKind.of(parts).asked().stream().map(LessonPart.Asked::question).toList();
    }
}
