package coldwright.lesson;

import static coldwright.lesson.FaultList.text;

import org.commonmark.node.Node;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

import java.nio.file.Path;

/**
 * Reads a lesson. Faults don't stop it: each is reported in one sentence with its line, and the
 * rest of the lesson stays usable.
 */
public final class LessonReader {
    /** Blocks nested deeper than this are read as plain text. */
    private static final int DEEPEST_NESTING = 40;

    private LessonReader() {}

    /**
     * Reads a lesson from its text.
     *
     * @param fileName the file's name in messages
     * @param text the lesson's CommonMark
     */
    public static Lesson read(String fileName, String text) {
        return read(fileName, text, new FaultList(fileName));
    }

    /**
     * Reads a lesson from its bytes.
     *
     * @param fileName the file's name in messages
     * @param bytes the lesson's file, UTF-8
     */
    public static Lesson read(String fileName, byte[] bytes) {
        FaultList faults = new FaultList(fileName);
        return LessonFile.decode(bytes, faults)
                .map(text -> read(fileName, text, faults))
                .orElseGet(() -> LessonBuilder.unreadable(fileName, faults));
    }

    /**
     * Reads a lesson from a file.
     *
     * @param file a file of at most {@value LessonFile#MOST_BYTES} bytes
     * @return the lesson, with its faults; without steps if it can't be read
     */
    public static Lesson read(Path file) {
        FaultList faults = new FaultList(file.toString());
        return LessonFile.read(file, faults)
                .map(text -> read(file.toString(), text, faults))
                .orElseGet(() -> LessonBuilder.unreadable(file.toString(), faults));
    }

    private static Lesson read(String fileName, String text, FaultList faults) {
        if (text.isBlank()) {
            faults.add(1, text("file.empty"));
            return LessonBuilder.unreadable(fileName, faults);
        }
        BlockCloser.Closed closed = BlockCloser.close(text, faults);
        LessonBuilder lesson = new LessonBuilder(fileName, faults, closed);
        Node document = closed.document();
        Node next;
        for (Node block = document.getFirstChild(); block != null; block = next) {
            next = block.getNext();
            lesson.add(block);
        }
        return lesson.build(text);
    }

    static Parser parser() {
        return Parser.builder()
                .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
                .maxOpenBlockParsers(DEEPEST_NESTING)
                .maxInlineNesting(DEEPEST_NESTING)
                .build();
    }
}
