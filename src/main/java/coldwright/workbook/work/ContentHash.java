package coldwright.workbook.work;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.text.TextFile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The SHA-256 of a text in UTF-8 with {@code \n} as line end, in 64 lower-case hexadecimal digits:
 * the same file has the same hash on every system.
 */
public record ContentHash(String hex) {
    private static final Pattern FORM = Pattern.compile("[0-9a-f]{64}");

    /** Refuses a text that isn't such a hash. */
    public ContentHash {
        if (!FORM.matcher(hex).matches()) {
            throw new IllegalArgumentException(
                    "\"%s\" isn't a content hash; it must be 64 digits from 0 to f".formatted(hex));
        }
    }

    public static ContentHash of(String text) {
        try {
            byte[] bytes = text.replace("\r\n", "\n").getBytes(StandardCharsets.UTF_8);
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            return new ContentHash(HexFormat.of().formatHex(digest));
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java has SHA-256", e);
        }
    }

    /** The hash of a lesson's file, from the parsed bytes; of the empty text if it isn't text. */
    public static ContentHash of(byte[] bytes) {
        return of(TextFile.of(bytes).text().orElse(""));
    }

    /**
     * The hash of a lesson that was read from a file or came with the program; empty if its file no
     * longer exists. Reads the file again; to ask for consent, hash the parsed bytes instead.
     */
    public static Optional<ContentHash> of(Lesson lesson) {
        try {
            Path file = Path.of(lesson.file());
            if (Files.isRegularFile(file)) {
                return Optional.of(of(Files.readAllBytes(file)));
            }
        } catch (InvalidPathException | IOException e) {
            return Optional.empty();
        }
        try (InputStream in = LessonFolder.class.getResourceAsStream("/" + lesson.file())) {
            return in == null ? Optional.empty() : Optional.of(of(in.readAllBytes()));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    @Override
    public String toString() {
        return hex;
    }
}
