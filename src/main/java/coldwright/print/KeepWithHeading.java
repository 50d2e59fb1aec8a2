package coldwright.print;

import coldwright.lesson.LessonPart;

import java.util.List;

/** What of a step stays on the page of its heading. */
final class KeepWithHeading {
    /** Longer text than this does not look lost at the foot of a page. */
    private static final int SHORT = 450;

    private KeepWithHeading() {}

    /**
     * How many parts stay with the heading.
     *
     * @param parts the step's
     * @return 2 if the first is a short text with something behind it, of a snippet only its code;
     *     else 0
     */
    static int partsOf(List<LessonPart> parts) {
        return parts.size() > 1
                        && parts.get(0) instanceof LessonPart.Prose prose
                        && HtmlMarkup.prose(prose.nodes()).length() <= SHORT
                        && (parts.get(1) instanceof LessonPart.Prediction
                                || parts.get(1) instanceof LessonPart.Snippet)
                ? 2
                : 0;
    }
}
