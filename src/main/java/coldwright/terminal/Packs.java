package coldwright.terminal;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonPack;
import coldwright.lesson.LessonReader;
import coldwright.lesson.LessonShelf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What a word on the command line means: one lesson, a folder of lessons, or a zip of them. */
final class Packs {
    private Packs() {}

    /**
     * The lessons that a word means.
     *
     * @param word a lesson's number or name, a lesson file, a folder or a zip file
     * @param shelf the lessons that have names
     * @return one or more
     * @throws IllegalArgumentException if there are none; one sentence
     */
    static List<Lesson> lessons(String word, LessonShelf shelf) {
        try {
            Path path = Path.of(word);
            boolean named = word.isBlank() || shelf.names().contains(word);
            if (!named && Files.isDirectory(path)) {
                return in(path);
            }
            if (!named && word.toLowerCase(Locale.ROOT).endsWith(LessonPack.ENDING)) {
                return LessonPack.read(path);
            }
        } catch (InvalidPathException e) {
            return List.of(shelf.find(word));
        }
        return List.of(shelf.find(word));
    }

    private static List<Lesson> in(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            List<Lesson> lessons =
                    files.filter(file -> file.toString().endsWith(".md"))
                            .sorted()
                            .map(LessonReader::read)
                            .toList();
            if (lessons.isEmpty()) {
                throw new IllegalArgumentException(
                        folder + " holds no lessons; their names end in .md");
            }
            return lessons;
        } catch (IOException e) {
            throw new IllegalArgumentException(
                    folder + " can't be read; look whether you may open it", e);
        }
    }
}
