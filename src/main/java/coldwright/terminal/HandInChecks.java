package coldwright.terminal;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonReader;
import coldwright.lesson.LessonShelf;
import coldwright.text.TextFault;
import coldwright.text.TextFile;
import coldwright.workbook.entry.Parsed;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.work.ContentHash;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Checks what learners handed in: files, or folders of them. One bad file never stops the rest. */
final class HandInChecks {
    private static final int MOST_BYTES = 16_000_000;

    private final Screen screen;
    private final LessonShelf shelf;
    private final Duration patience;

    /**
     * Sets the checks up.
     *
     * @param screen takes what came of them
     * @param shelf the lessons that may have been worked on
     * @param patience how long one snippet may run
     */
    HandInChecks(Screen screen, LessonShelf shelf, Duration patience) {
        this.screen = screen;
        this.shelf = shelf;
        this.patience = patience;
    }

    /** Whether a word on the command line names a hand-in or a folder that holds one. */
    static boolean isMeant(String word) {
        try {
            return word.endsWith(HandIn.ENDING) || !in(Path.of(word)).isEmpty();
        } catch (InvalidPathException e) {
            return false;
        }
    }

    private static List<Path> in(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(HandIn.ENDING)).sorted().toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    /**
     * Checks hand-ins.
     *
     * @param words files and folders
     * @return what the program ends with
     */
    int check(List<String> words) {
        List<Path> files = new ArrayList<>();
        for (String word : words) {
            if (!isMeant(word)) {
                screen.complain(
                        "%s is no hand-in; their names end in %s, and lessons are checked by a command of their own"
                                .formatted(word, HandIn.ENDING));
                return Exit.NOT_UNDERSTOOD;
            }
            Path path = Path.of(word);
            files.addAll(Files.isDirectory(path) ? in(path) : List.of(path));
        }
        int failed = 0;
        try (Runs runs = new Runs(patience)) {
            for (Path file : files) {
                failed += holds(file, runs) ? 0 : 1;
            }
        }
        screen.say(
                "%s: %s"
                        .formatted(
                                HandInCheck.counted(files.size(), "hand-in"),
                                failed == 0
                                        ? "everything holds"
                                        : "not everything holds in " + failed));
        return failed == 0 ? Exit.DONE : Exit.FAILED;
    }

    private boolean holds(Path file, Runs runs) {
        try {
            return check(file, runs);
        } catch (RuntimeException e) {
            System.getLogger("coldwright.terminal")
                    .log(System.Logger.Level.DEBUG, "a hand-in's check broke", e);
            screen.say("%s: its check broke and was given up: %s".formatted(file, e));
            return false;
        }
    }

    private boolean check(Path file, Runs runs) {
        TextFile read = TextFile.read(file, MOST_BYTES);
        tell(file, read.faults());
        if (read.text().isEmpty()) {
            return false;
        }
        Parsed<Optional<HandIn>> parsed = HandIn.read(read.text().get());
        tell(file, parsed.faults());
        if (parsed.value().isEmpty()) {
            return false;
        }
        HandIn handIn = parsed.value().get();
        Optional<Lesson> lesson = lessonOf(handIn, file);
        if (lesson.isEmpty()) {
            screen.say(
                    "%s: there is no lesson %s on the shelf nor beside the hand-in; put its file there"
                            .formatted(file, handIn.lessonFile()));
            return false;
        }
        screen.say("%s: %s, %s".formatted(file, handIn.learner(), lesson.get().title()));
        if (!ContentHash.of(lesson.get()).equals(Optional.of(handIn.lessonHash()))) {
            screen.say(
                    "  %s here has another text than the lesson that was worked on; what differs may not be the learner's doing"
                            .formatted(handIn.lessonFile()));
        }
        HandInCheck.Report report = HandInCheck.of(handIn, lesson.get(), runs);
        report.lines().forEach(screen::say);
        return report.holds() && parsed.faults().isEmpty() && read.faults().isEmpty();
    }

    private void tell(Path file, List<TextFault> faults) {
        for (TextFault fault : faults) {
            String line = fault.line() > 0 ? ":" + fault.line() : "";
            screen.say("%s%s: %s".formatted(file, line, fault.words()));
        }
    }

    /** The lesson by its name alone: a hand-in may not name a file elsewhere. */
    private Optional<Lesson> lessonOf(HandIn handIn, Path file) {
        if (shelf.names().contains(handIn.lessonName())) {
            return Optional.of(shelf.read(handIn.lessonName()));
        }
        boolean plainName = handIn.lessonFile().matches("[^/\\\\:\\x00-\\x1F]+\\.md");
        return Optional.of(handIn.lessonFile())
                .filter(name -> plainName)
                .map(name -> file.toAbsolutePath().resolveSibling(name))
                .filter(Files::isRegularFile)
                .map(LessonReader::read);
    }
}
