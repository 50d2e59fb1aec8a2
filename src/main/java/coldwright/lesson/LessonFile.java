package coldwright.lesson;

import static coldwright.lesson.FaultList.text;

import coldwright.text.NearestWord;
import coldwright.text.TextFile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads the text of a lesson file, or explains in one sentence why it can't. */
final class LessonFile {
    /** Maximum size, bytes; a long lesson has 40,000. */
    static final int MOST_BYTES = 1_000_000;

    private LessonFile() {}

    /** The text of a file, unless it is missing, a folder, too large, unreadable or not text. */
    static Optional<String> read(Path file, FaultList faults) {
        if (Files.isDirectory(file)) {
            faults.add(0, text("file.folder", examples(file)));
            return Optional.empty();
        }
        if (Files.notExists(file)) {
            faults.add(0, text("file.missing", nearest(file)));
            return Optional.empty();
        }
        return faultText(TextFile.read(file, MOST_BYTES), faults);
    }

    /** The text of a file's bytes. Invalid UTF-8 is reported as a fault and replaced by U+FFFD. */
    static Optional<String> decode(byte[] bytes, FaultList faults) {
        return faultText(TextFile.of(bytes), faults);
    }

    private static Optional<String> faultText(TextFile file, FaultList faults) {
        file.faults().forEach(fault -> faults.add(fault.line(), fault.words()));
        return file.text();
    }

    private static String nearest(Path file) {
        Path name = file.getFileName();
        Optional<String> near =
                name == null
                        ? Optional.empty()
                        : NearestWord.to(
                                name.toString(), lessonsIn(file.toAbsolutePath().getParent()));
        return near.map(word -> text("near", word)).orElse(text("file.check"));
    }

    private static String examples(Path folder) {
        List<String> names = lessonsIn(folder).stream().sorted().limit(3).toList();
        return names.isEmpty() ? "" : text("file.examples", String.join(", ", names));
    }

    private static Collection<String> lessonsIn(Path folder) {
        if (folder == null || !Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".md"))
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }
}
