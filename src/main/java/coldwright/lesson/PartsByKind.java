package coldwright.lesson;

import java.util.ArrayList;
import java.util.List;

/**
 * Parts of a lesson, picked by kind.
 *
 * @param notes the notes for the teacher, in order
 * @param snippets the snippets, also those given, in order
 * @param predictions the questions, in order
 */
public record PartsByKind(
        List<LessonPart.Teacher> notes,
        List<LessonPart.Snippet> snippets,
        List<LessonPart.Prediction> predictions) {
    /**
     * Picks them.
     *
     * @param parts any parts
     * @return those of each kind
     */
    public static PartsByKind of(List<LessonPart> parts) {
        PartsByKind picked =
                new PartsByKind(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        parts.forEach(part -> part.accept(picked.new Picker()));
        return new PartsByKind(
                List.copyOf(picked.notes),
                List.copyOf(picked.snippets),
                List.copyOf(picked.predictions));
    }

    private final class Picker implements LessonPart.Visitor {
        @Override
        public void prose(LessonPart.Prose prose) {}

        @Override
        public void teacher(LessonPart.Teacher note) {
            notes.add(note);
        }

        @Override
        public void snippet(LessonPart.Snippet snippet) {
            snippets.add(snippet);
        }

        @Override
        public void prediction(LessonPart.Prediction prediction) {
            predictions.add(prediction);
        }

        @Override
        public void check(LessonPart.Check check) {}
    }
}
