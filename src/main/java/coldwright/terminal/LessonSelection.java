package coldwright.terminal;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.lesson.LessonPack;

import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** The lessons that a command is to use, and whether their snippets are trusted. */
final class LessonSelection {
    @Parameters(paramLabel = "LESSON", descriptionKey = "lesson")
    private String word;

    @Option(names = "--trust", descriptionKey = "trust")
    private boolean trust;

    boolean trusts() {
        return trust;
    }

    /** As {@link #lessons(List, LessonFolder)}, for the word that was typed. */
    List<Lesson> lessons(LessonFolder shelf) {
        return lessons(word, shelf);
    }

    /**
     * The lessons, at least one for each word, that words name: a lesson's number or name, a lesson
     * file, a folder or a zip file.
     *
     * @throws IllegalArgumentException if there are none
     */
    static List<Lesson> lessons(List<String> words, LessonFolder shelf) {
        return words.stream().flatMap(word -> lessons(word, shelf).stream()).toList();
    }

    private static List<Lesson> lessons(String word, LessonFolder shelf) {
        boolean named = word.isBlank() || shelf.names().contains(word);
        try {
            if (!named && LessonPack.isOne(Path.of(word))) {
                return LessonPack.of(Path.of(word));
            }
        } catch (InvalidPathException e) {
            if (isLost(word)) {
                throw new IllegalArgumentException(lost(word), e);
            }
        }
        return List.of(shelf.find(word));
    }

    /** Whether letters of a path were lost because the system's character set lacks them. */
    static boolean isLost(String word) {
        return word.indexOf('\uFFFD') >= 0 || word.matches(".*[^\\p{ASCII}].*");
    }

    /** The message for such a path. */
    static String lost(String word) {
        return text("path.lost", word, System.getProperty("sun.jnu.encoding", "?"));
    }
}
