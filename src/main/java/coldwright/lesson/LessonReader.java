package coldwright.lesson;

import static coldwright.lesson.FaultList.text;

import coldwright.text.NearestWord;
import coldwright.text.TextFile;

import org.commonmark.node.Node;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Reads a lesson. Faults don't stop it: each is reported in one sentence with its line, and the
 * rest of the lesson stays usable.
 */
public final class LessonReader {
    /** Maximum size of a file, bytes; a long lesson has 40,000. */
    static final int MOST_BYTES = 1_000_000;

    static final String ENDING = ".md";

    /** Blocks nested deeper than this are read as plain text. */
    private static final int DEEPEST_NESTING = 40;

    private static final Function<String, TextFile> NO_FILES =
            name -> TextFile.missing(text("asks.no-folder"));

    private LessonReader() {}

    /** Reads a lesson from its CommonMark, with a file name for messages. */
    public static Lesson read(String fileName, String text) {
        return read(fileName, new TextFile(Optional.of(text), List.of()), NO_FILES);
    }

    /** The same from bytes in UTF-8; invalid UTF-8 is a fault and replaced by U+FFFD. */
    public static Lesson read(String fileName, byte[] bytes) {
        return read(fileName, bytes, NO_FILES);
    }

    /** As {@link #read(String, byte[])}; a file that the lesson asks for is found by its name. */
    static Lesson read(String fileName, byte[] bytes, Function<String, TextFile> files) {
        return read(fileName, TextFile.of(bytes), files);
    }

    /**
     * Reads a lesson from a file of at most {@value #MOST_BYTES} bytes; without steps if it can't
     * be read.
     */
    public static Lesson read(Path file) {
        TextFile text =
                Files.isDirectory(file)
                        ? TextFile.missing(text("file.folder", examples(file)))
                        : Files.notExists(file)
                                ? TextFile.missing(text("file.missing", nearest(file)))
                                : TextFile.read(file, MOST_BYTES);
        return read(file.toString(), text, AskedFile.beside(file));
    }

    private static Lesson read(String fileName, TextFile file, Function<String, TextFile> files) {
        FaultList faults = new FaultList(fileName);
        file.faults().forEach(fault -> faults.add(fault.line(), fault.words()));
        String text = file.text().orElse("");
        if (text.isBlank() && file.text().isPresent()) {
            faults.add(1, text("file.empty"));
        }
        BlockCloser.Closed closed = BlockCloser.close(text, faults);
        LessonBuilder lesson = new LessonBuilder(fileName, faults, closed, files);
        if (text.isBlank()) {
            return lesson.unreadable();
        }
        Node next;
        for (Node block = closed.document().getFirstChild(); block != null; block = next) {
            next = block.getNext();
            lesson.add(block);
        }
        return lesson.build(text);
    }

    private static String nearest(Path file) {
        Path name = file.getFileName();
        Path folder = file.toAbsolutePath().getParent();
        return Optional.ofNullable(name)
                .flatMap(one -> NearestWord.to(one.toString(), lessonsIn(folder)))
                .map(near -> text("near", near))
                .orElse(text("file.check"));
    }

    private static String examples(Path folder) {
        List<String> names = lessonsIn(folder).stream().limit(3).toList();
        return names.isEmpty() ? "" : text("file.examples", String.join(", ", names));
    }

    /** The names of the lessons' files in a folder, in order; none if it can't be read. */
    static List<String> lessonsIn(Path folder) {
        if (folder == null || !Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(ENDING))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    static Parser parser() {
        return Parser.builder()
                .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
                .maxOpenBlockParsers(DEEPEST_NESTING)
                .maxInlineNesting(DEEPEST_NESTING)
                .build();
    }
}
