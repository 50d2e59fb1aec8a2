package coldwright.terminal;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.lesson.LessonPack;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** What a word on the command line means: one lesson, a folder of lessons, or a zip of them. */
final class LessonArguments {
    private LessonArguments() {}

    /**
     * The lessons that a word means.
     *
     * @param word a lesson's number or name, a lesson file, a folder or a zip file
     * @param shelf the lessons that have names
     * @return one or more
     * @throws IllegalArgumentException if there are none; one sentence
     */
    static List<Lesson> lessons(String word, LessonFolder shelf) {
        try {
            Path path = Path.of(word);
            boolean named = word.isBlank() || shelf.names().contains(word);
            if (!named && LessonPack.isOne(path)) {
                return LessonPack.of(path);
            }
        } catch (InvalidPathException e) {
            return List.of(shelf.find(word));
        }
        return List.of(shelf.find(word));
    }
}
