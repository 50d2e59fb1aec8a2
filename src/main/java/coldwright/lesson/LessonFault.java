package coldwright.lesson;

/**
 * An error in a lesson's text.
 *
 * @param file the file's name
 * @param line the line, from 1; 0 for the whole file
 * @param words one sentence: what is wrong and how to fix it
 */
public record LessonFault(String file, int line, String words) {
    @Override
    public String toString() {
        return line > 0 ? file + ":" + line + ": " + words : file + ": " + words;
    }
}
