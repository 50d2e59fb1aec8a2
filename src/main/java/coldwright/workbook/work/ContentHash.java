package coldwright.workbook.work;

import static coldwright.workbook.entry.WorkbookText.refusal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
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
            throw refusal("hash.unfit", hex);
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

    @Override
    public String toString() {
        return hex;
    }
}
