package coldwright.workbook.work;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonPart;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiPredicate;

/** Matches work to the snippets and questions of a lesson that may have changed. */
final class SnippetMatching {
    /** A snippet of the current lesson. */
    private record SnippetPosition(String step, int index, ContentHash hash) {}

    /** A learner's text that is not yet matched to its snippet. */
    private record UnplacedText(String step, SnippetEdit edit) {
        boolean isAt(SnippetPosition place) {
            return step.equals(place.step()) && edit.index() == place.index();
        }
    }

    private final List<SnippetPosition> free = new ArrayList<>();
    private final List<UnplacedText> edits = new ArrayList<>();
    private final List<UnplacedText> aside = new ArrayList<>();
    private final List<UnplacedText> placed = new ArrayList<>();

    private SnippetMatching() {}

    static List<StepWork> fit(List<StepWork> kept, Lesson lesson) {
        Map<String, List<LessonPart>> parts = StepNames.parts(lesson);
        List<StepWork> steps = named(kept, parts);
        SnippetMatching matching = new SnippetMatching();
        parts.forEach(matching::offer);
        for (StepWork step : steps) {
            String title = step.title();
            step.edits().forEach(one -> matching.edits.add(new UnplacedText(title, one)));
            step.aside().forEach(one -> matching.aside.add(new UnplacedText(title, one)));
        }
        matching.place();
        Map<String, StepWork> work = new LinkedHashMap<>();
        steps.forEach(step -> work.put(step.title(), step));
        matching.placed.forEach(
                piece -> work.putIfAbsent(piece.step(), StepWork.empty(piece.step())));
        return work.values().stream()
                .map(matching::fitted)
                .map(step -> withQuestionsOf(step, parts.getOrDefault(step.title(), List.of())))
                .toList();
    }

    private void offer(String step, List<LessonPart> parts) {
        int index = 0;
        for (LessonPart.Snippet snippet : LessonPart.only(LessonPart.Snippet.class, parts)) {
            free.add(new SnippetPosition(step, index++, ContentHash.of(snippet.code())));
        }
    }

    /** Unmoved texts come first, so that no moved one can take their place. */
    private void place() {
        BiPredicate<UnplacedText, SnippetPosition> sameStep =
                (piece, place) -> piece.step().equals(place.step());
        for (BiPredicate<UnplacedText, SnippetPosition> rule :
                List.<BiPredicate<UnplacedText, SnippetPosition>>of(
                        UnplacedText::isAt, sameStep, (piece, place) -> true)) {
            place(edits, rule);
            place(aside, rule);
        }
    }

    private void place(List<UnplacedText> pieces, BiPredicate<UnplacedText, SnippetPosition> rule) {
        for (UnplacedText piece : List.copyOf(pieces)) {
            free.stream()
                    .filter(place -> place.hash().equals(piece.edit().from()))
                    .filter(place -> rule.test(piece, place))
                    .findFirst()
                    .ifPresent(
                            place -> {
                                free.remove(place);
                                pieces.remove(piece);
                                SnippetEdit old = piece.edit();
                                placed.add(
                                        new UnplacedText(
                                                place.step(),
                                                new SnippetEdit(
                                                        place.index(), old.text(), old.from())));
                            });
        }
    }

    private StepWork fitted(StepWork step) {
        List<SnippetEdit> kept = new ArrayList<>(of(aside, step.title()));
        of(edits, step.title()).stream().filter(edit -> !kept.contains(edit)).forEach(kept::add);
        return step.with(of(placed, step.title()), kept);
    }

    private static List<SnippetEdit> of(List<UnplacedText> pieces, String step) {
        return pieces.stream()
                .filter(piece -> piece.step().equals(step))
                .map(UnplacedText::edit)
                .toList();
    }

    private static StepWork withQuestionsOf(StepWork step, List<LessonPart> parts) {
        List<String> questions = questions(parts);
        Map<Integer, GivenPrediction> answers = new LinkedHashMap<>();
        List<GivenPrediction> lost = new ArrayList<>();
        for (GivenPrediction one : step.predictions()) {
            boolean there =
                    one.index() < questions.size()
                            && questions.get(one.index()).equals(one.question());
            int now = there ? one.index() : questions.indexOf(one.question());
            if (now < 0
                    || answers.putIfAbsent(
                                    now, new GivenPrediction(now, one.question(), one.answer()))
                            != null) {
                lost.add(one);
            }
        }
        Set<Integer> taken = new TreeSet<>(answers.keySet());
        int behind = questions.size();
        for (GivenPrediction one : lost) {
            while (!taken.add(behind)) {
                behind++;
            }
            answers.put(behind, new GivenPrediction(behind, one.question(), one.answer()));
        }
        return step.withPredictions(List.copyOf(answers.values()));
    }

    /**
     * Renames work to the current titles of its steps: a missing step with answers gets the name of
     * the first step without work that asks all of these questions.
     */
    private static List<StepWork> named(List<StepWork> steps, Map<String, List<LessonPart>> parts) {
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
    private static List<String> questions(List<LessonPart> parts) {
        return LessonPart.only(LessonPart.Asked.class, parts).stream()
                .map(LessonPart.Asked::question)
                .toList();
    }
}
