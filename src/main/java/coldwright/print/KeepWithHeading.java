package coldwright.print;

import coldwright.lesson.LessonPart;

import java.util.List;

/** The parts of a step that stay on the page of its heading. */
final class KeepWithHeading {
    /** A longer text does not look lost at the foot of a page. */
    private static final int SHORT = 450;

    private KeepWithHeading() {}

    /**
     * How many parts stay with the heading: 2 if the first is a short text and another follows (of
     * a snippet only its code), else 0.
     */
    static int partsOf(List<LessonPart> parts) {
        if (parts.size() < 2) {
            return 0;
        }
        LessonPart second = parts.get(1);
        boolean follows =
                second instanceof LessonPart.Asked || second instanceof LessonPart.Snippet;
        boolean isShort =
                parts.get(0) instanceof LessonPart.Prose prose
                        && HtmlMarkup.prose(prose.nodes()).length() <= SHORT;
        return follows && isShort ? 2 : 0;
    }
}
