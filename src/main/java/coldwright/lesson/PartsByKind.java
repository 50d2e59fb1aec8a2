package coldwright.lesson;

import java.util.ArrayList;
import java.util.List;

/** The parts of a lesson, grouped by kind. */
public final class PartsByKind implements LessonPart.Visitor {
    private final List<LessonPart.Prose> prose = new ArrayList<>();
    private final List<LessonPart.Teacher> notes = new ArrayList<>();
    private final List<LessonPart.Snippet> snippets = new ArrayList<>();
    private final List<LessonPart.Asked> asked = new ArrayList<>();

    private PartsByKind() {}

    /** Groups the parts. */
    public static PartsByKind of(List<LessonPart> parts) {
        PartsByKind picked = new PartsByKind();
        parts.forEach(part -> part.accept(picked));
        return picked;
    }

    @Override
    public void prose(LessonPart.Prose one) {
        prose.add(one);
    }

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
        asked.add(prediction);
    }

    @Override
    public void question(LessonPart.Question question) {
        asked.add(question);
    }

    /** Ignored: nobody needs the checks separately. */
    @Override
    public void check(LessonPart.Check check) {}

    /** The texts to read, in order. */
    public List<LessonPart.Prose> prose() {
        return List.copyOf(prose);
    }

    /** The notes for the teacher, in order. */
    public List<LessonPart.Teacher> notes() {
        return List.copyOf(notes);
    }

    /** The snippets, including given ones, in order. */
    public List<LessonPart.Snippet> snippets() {
        return List.copyOf(snippets);
    }

    /** The questions before a run and those without one, in order. */
    public List<LessonPart.Asked> asked() {
        return List.copyOf(asked);
    }
}
