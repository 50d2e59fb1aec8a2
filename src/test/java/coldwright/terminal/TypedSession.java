package coldwright.terminal;

import coldwright.lesson.LessonFolder;
import coldwright.terminal.console.TerminalScreen;
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
public final class TypedSession {
    static final Path LESSONS = Path.of("src/test/resources/lessons-to-run");
    private static final int WIDTH = 80;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final TerminalScreen screen;

    private TypedSession(Optional<TerminalScreen.Asker> asker) {
        screen = new TerminalScreen(stream(out), stream(err), asker, WIDTH);
    }

    private TypedSession(int width, Deque<String> left) {
        PrintStream shown = stream(out);
        TerminalScreen.Asker asker =
                question -> {
                    shown.println(question);
                    return Optional.ofNullable(left.poll());
                };
        screen = new TerminalScreen(shown, stream(err), Optional.of(asker), width);
    }

    public static TypedSession nobody() {
        return new TypedSession(Optional.empty());
    }

    /** Somebody who types lines and then leaves. */
    public static TypedSession somebody(String... lines) {
        Deque<String> left = new ArrayDeque<>(Arrays.asList(lines));
        return new TypedSession(Optional.of(question -> Optional.ofNullable(left.poll())));
    }

    /** Somebody at a terminal of a width, whose questions stand in what was shown, a line each. */
    public static TypedSession at(int width, String... lines) {
        return new TypedSession(width, new ArrayDeque<>(Arrays.asList(lines)));
    }

    private static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }

    public TerminalScreen screen() {
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

    public int obey(DataFolder data, String... words) {
        return new Terminal(screen, LessonFolder.in(LESSONS), data, SharedBenches.SHARED)
                .execute(words);
    }

    public String out() {
        return text(out);
    }

    String err() {
        return text(err);
    }

    private static String text(ByteArrayOutputStream bytes) {
        return bytes.toString(StandardCharsets.UTF_8).replace("\r\n", "\n").replace('\\', '/');
    }
}
