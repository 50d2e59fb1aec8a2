package coldwright.terminal;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.lesson.LessonPack;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** Reads a command-line argument: a lesson, a folder of lessons or a zip file of lessons. */
final class LessonArguments {
    private LessonArguments() {}

    /**
     * The lessons that an argument names.
     *
     * @param word a lesson's number or name, a lesson file, a folder or a zip file
     * @return at least one lesson
     * @throws IllegalArgumentException if there are none
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
