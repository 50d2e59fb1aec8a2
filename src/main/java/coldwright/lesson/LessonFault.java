package coldwright.lesson;

/**
 * Something wrong in a lesson's text.
 *
 * @param file the file's name
 * @param line the line, from 1; 0 if it is the whole file
 * @param words one sentence: what is wrong and the mend
 */
public record LessonFault(String file, int line, String words) {
    @Override
    public String toString() {
        return line > 0 ? file + ":" + line + ": " + words : file + ": " + words;
    }
}
