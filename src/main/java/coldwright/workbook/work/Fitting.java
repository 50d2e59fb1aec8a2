package coldwright.workbook.work;

import coldwright.lesson.Lesson;
import coldwright.lesson.Part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiPredicate;

/** Finds the snippets and questions that work belongs to in a lesson that may have changed. */
final class Fitting {
    /** A snippet of the lesson as it is today. */
    private record Place(String step, int index, ContentHash hash) {}

    /** A learner's text that looks for its snippet. */
    private record Piece(String step, SnippetEdit edit) {
        boolean isAt(Place place) {
            return step.equals(place.step()) && edit.index() == place.index();
        }
    }

    private final List<Place> free = new ArrayList<>();
    private final List<Piece> edits = new ArrayList<>();
    private final List<Piece> aside = new ArrayList<>();
    private final List<Piece> placed = new ArrayList<>();

    private Fitting() {}

    static List<StepWork> fit(List<StepWork> kept, Lesson lesson) {
        Map<String, List<Part>> parts = StepNames.parts(lesson);
        List<StepWork> steps = Renamed.named(kept, parts);
        Fitting fitting = new Fitting();
        parts.forEach(fitting::offer);
        for (StepWork step : steps) {
            step.edits().forEach(edit -> fitting.edits.add(new Piece(step.title(), edit)));
            step.aside().forEach(edit -> fitting.aside.add(new Piece(step.title(), edit)));
        }
        fitting.place();
        Map<String, StepWork> work = new LinkedHashMap<>();
        steps.forEach(step -> work.put(step.title(), step));
        fitting.placed.forEach(
                piece -> work.putIfAbsent(piece.step(), StepWork.empty(piece.step())));
        return work.values().stream()
                .map(fitting::fitted)
                .map(step -> withQuestionsOf(step, parts.getOrDefault(step.title(), List.of())))
                .toList();
    }

    private void offer(String step, List<Part> parts) {
        int index = 0;
        for (Part part : parts) {
            if (part instanceof Part.Snippet snippet) {
                free.add(new Place(step, index++, ContentHash.of(snippet.code())));
            }
        }
    }

    /** What stands where it belongs comes first, so that nothing that moved can take its place. */
    private void place() {
        BiPredicate<Piece, Place> sameStep = (piece, place) -> piece.step().equals(place.step());
        for (BiPredicate<Piece, Place> rule :
                List.<BiPredicate<Piece, Place>>of(Piece::isAt, sameStep, (piece, place) -> true)) {
            place(edits, rule);
            place(aside, rule);
        }
    }

    private void place(List<Piece> pieces, BiPredicate<Piece, Place> rule) {
        for (Piece piece : List.copyOf(pieces)) {
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
                                        new Piece(
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

    private static List<SnippetEdit> of(List<Piece> pieces, String step) {
        return pieces.stream().filter(piece -> piece.step().equals(step)).map(Piece::edit).toList();
    }

    private static StepWork withQuestionsOf(StepWork step, List<Part> parts) {
        List<String> questions = Renamed.questions(parts);
        Map<Integer, Forecasted> answers = new LinkedHashMap<>();
        List<Forecasted> lost = new ArrayList<>();
        for (Forecasted one : step.forecasts()) {
            boolean there =
                    one.index() < questions.size()
                            && questions.get(one.index()).equals(one.question());
            int now = there ? one.index() : questions.indexOf(one.question());
            if (now < 0
                    || answers.putIfAbsent(now, new Forecasted(now, one.question(), one.said()))
                            != null) {
                lost.add(one);
            }
        }
        Set<Integer> taken = new TreeSet<>(answers.keySet());
        int behind = questions.size();
        for (Forecasted one : lost) {
            while (!taken.add(behind)) {
                behind++;
            }
            answers.put(behind, new Forecasted(behind, one.question(), one.said()));
        }
        return step.withForecasts(List.copyOf(answers.values()));
    }
}
