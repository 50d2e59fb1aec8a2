package coldwright.lesson;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** From a file to its bytes to its text, or one sentence on why not. */
final class LessonBytes {
    /** A long lesson has 40,000 bytes; this is a book. */
    static final int MOST_BYTES = 1_000_000;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private LessonBytes() {}

    /** The bytes of a file, unless it is missing, no file, too large or locked. */
    static Optional<byte[]> load(Path file, FaultList faults) {
        try {
            if (Files.isDirectory(file)) {
                faults.add(0, "this is a folder; name one of the lessons in it" + examples(file));
            } else if (Files.notExists(file)) {
                faults.add(0, "there is no such file" + nearest(file));
            } else if (!Files.isRegularFile(file)) {
                faults.add(0, "this is no plain file; save the lesson as one");
            } else if (Files.size(file) > MOST_BYTES) {
                faults.add(0, tooLarge(Files.size(file)));
            } else {
                return bytesOf(file, faults);
            }
        } catch (IOException e) {
            faults.add(0, "the file can't be read; look whether you may open it");
        }
        return Optional.empty();
    }

    private static Optional<byte[]> bytesOf(Path file, FaultList faults) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                faults.add(0, tooLarge(bytes.length));
                return Optional.empty();
            }
            return Optional.of(bytes);
        }
    }

    private static String tooLarge(long bytes) {
        return "the file has %.1f MB; a lesson may have at most %d MB: cut it into several lessons"
                .formatted(bytes / 1e6, MOST_BYTES / 1_000_000);
    }

    /** The text of a file's bytes. What is not UTF-8 is told, and stands as a question mark. */
    static Optional<String> decode(byte[] bytes, FaultList faults) {
        if (looksLikeUtf16(bytes)) {
            faults.add(1, "the file is UTF-16; save it as UTF-8");
            return Optional.empty();
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        boolean told = false;
        CoderResult result = decoder.decode(in, out, true);
        while (result.isError()) {
            if (!told) {
                faults.add(
                        lineAt(bytes, in.position()),
                        "the byte 0x%02X on this line is not UTF-8; save the file as UTF-8"
                                .formatted(bytes[in.position()]));
            }
            told = true;
            in.position(in.position() + result.length());
            out.put('\uFFFD');
            result = decoder.decode(in, out, true);
        }
        String text = out.flip().toString();
        if (!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK) {
            text = text.substring(1);
        }
        int nul = text.indexOf('\0');
        if (nul >= 0) {
            long line = 1 + text.substring(0, nul).chars().filter(c -> c == '\n').count();
            faults.add(
                    (int) line,
                    "the file holds a NUL character here; take it out, or save the file as UTF-8 text");
        }
        return Optional.of(text);
    }

    private static boolean looksLikeUtf16(byte[] bytes) {
        if (bytes.length < 2) {
            return false;
        }
        int mark = (bytes[0] & 0xFF) << 8 | bytes[1] & 0xFF;
        long nuls = 0;
        int looked = Math.min(bytes.length, 1000);
        for (int i = 0; i < looked; i++) {
            nuls += bytes[i] == 0 ? 1 : 0;
        }
        return mark == 0xFEFF || mark == 0xFFFE || nuls * 3 > looked;
    }

    private static int lineAt(byte[] bytes, int position) {
        int line = 1;
        for (int i = 0; i < position; i++) {
            line += bytes[i] == '\n' ? 1 : 0;
        }
        return line;
    }

    private static String nearest(Path file) {
        Path name = file.getFileName();
        String question =
                name == null
                        ? ""
                        : Nearest.question(
                                name.toString(), lessonsIn(file.toAbsolutePath().getParent()));
        return question.isEmpty() ? "; look at its name and folder" : question;
    }

    private static String examples(Path folder) {
        List<String> names = lessonsIn(folder).stream().sorted().limit(3).toList();
        return names.isEmpty() ? "" : ", such as " + String.join(", ", names);
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
