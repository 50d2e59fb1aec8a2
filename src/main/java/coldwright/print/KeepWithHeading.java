package coldwright.print;

import coldwright.lesson.LessonPart;

import java.util.List;

/** What of a step stays on the page of its heading. */
final class KeepWithHeading implements LessonPart.Visitor {
    /** Longer text than this does not look lost at the foot of a page. */
    private static final int SHORT = 450;

    private int before;
    private boolean shortText;
    private boolean follows;

    private KeepWithHeading() {}

    /**
     * How many parts stay with the heading.
     *
     * @param parts the step's
     * @return 2 if the first is a short text with something behind it, of a snippet only its code;
     *     else 0
     */
    static int partsOf(List<LessonPart> parts) {
        KeepWithHeading start = new KeepWithHeading();
        for (; start.before < Math.min(2, parts.size()); start.before++) {
            parts.get(start.before).accept(start);
        }
        return start.shortText && start.follows ? 2 : 0;
    }

    @Override
    public void prose(LessonPart.Prose prose) {
        shortText |= before == 0 && HtmlMarkup.prose(prose.nodes()).length() <= SHORT;
    }

    @Override
    public void prediction(LessonPart.Prediction prediction) {
        follows |= before == 1;
    }

    @Override
    public void snippet(LessonPart.Snippet snippet) {
        follows |= before == 1;
    }

    @Override
    public void teacher(LessonPart.Teacher note) {}

    @Override
    public void check(LessonPart.Check check) {}
}
