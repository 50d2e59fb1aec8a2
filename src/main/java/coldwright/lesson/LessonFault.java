package coldwright.lesson;

/**
 * An error in a lesson's text: its line, from 1, 0 for the whole file, and what is wrong and how to
 * fix it.
 */
public record LessonFault(String file, int line, String words) {
    @Override
    public String toString() {
        return line > 0 ? file + ":" + line + ": " + words : file + ": " + words;
    }
}
