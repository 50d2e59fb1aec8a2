package coldwright.terminal;

import coldwright.lesson.LessonShelf;
import coldwright.workbook.DataFolder;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Optional;
import java.util.UUID;

/** A terminal in memory, with or without somebody who types. */
final class Typed {
    static final Path LESSONS = Path.of("src/test/resources/lessons-to-run");
    private static final int WIDTH = 80;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final Screen screen;

    private Typed(Optional<Screen.Asker> asker) {
        screen = new Screen(stream(out), stream(err), asker, WIDTH);
    }

    private Typed(int width, Deque<String> left) {
        PrintStream shown = stream(out);
        Screen.Asker asker =
                question -> {
                    shown.println(question);
                    return Optional.ofNullable(left.poll());
                };
        screen = new Screen(shown, stream(err), Optional.of(asker), width);
    }

    static Typed nobody() {
        return new Typed(Optional.empty());
    }

    /** Somebody who types lines and then leaves. */
    static Typed somebody(String... lines) {
        Deque<String> left = new ArrayDeque<>(Arrays.asList(lines));
        return new Typed(Optional.of(question -> Optional.ofNullable(left.poll())));
    }

    /** Somebody at a terminal of a width, whose questions stand in what was shown, a line each. */
    static Typed at(int width, String... lines) {
        return new Typed(width, new ArrayDeque<>(Arrays.asList(lines)));
    }

    private static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }

    Screen screen() {
        return screen;
    }

    /** A folder for work that no other test uses; made only if something is kept. */
    static DataFolder data() {
        return new DataFolder(
                Path.of(System.getProperty("java.io.tmpdir"), "coldwright-" + UUID.randomUUID()));
    }

    int obey(String... words) {
        return obey(data(), words);
    }

    int obey(DataFolder data, String... words) {
        return new Terminal(screen, LessonShelf.in(LESSONS), data).obey(words);
    }

    String out() {
        return text(out);
    }

    String err() {
        return text(err);
    }

    private static String text(ByteArrayOutputStream bytes) {
        return bytes.toString(StandardCharsets.UTF_8).replace("\r\n", "\n").replace('\\', '/');
    }
}
