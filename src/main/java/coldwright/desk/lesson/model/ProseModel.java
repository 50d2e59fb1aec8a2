package coldwright.desk.lesson.model;

import coldwright.lesson.LessonPart;

/**
 * Text to read.
 *
 * @param prose the text as parsed
 */
public record ProseModel(LessonPart.Prose prose) implements PartModel {
    @Override
    public void accept(Visitor visitor) {
        visitor.prose(this);
    }
}
