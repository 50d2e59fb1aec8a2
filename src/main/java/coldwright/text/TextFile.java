package coldwright.text;

import coldwright.words.Phrase;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The UTF-8 text of a file, with U+FFFD for invalid UTF-8, empty if the file can't be used; and its
 * errors, in the order of lines.
 */
public record TextFile(Optional<String> text, List<TextFault> faults) {
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    public TextFile {
        faults = List.copyOf(faults);
    }

    /** Reads a file up to a size in bytes; never throws for a bad file. */
    public static TextFile read(Path file, int mostBytes) {
        try {
            if (Files.isDirectory(file)) {
                return missing(text("folder"));
            }
            if (Files.notExists(file)) {
                return missing(text("missing"));
            }
            if (!Files.isRegularFile(file)) {
                return missing(text("not-plain"));
            }
            if (Files.size(file) > mostBytes) {
                return missing(tooLarge(Files.size(file), mostBytes));
            }
            try (InputStream in = Files.newInputStream(file)) {
                return of(in.readNBytes(mostBytes + 1), mostBytes);
            }
        } catch (IOException e) {
            return missing(text("unreadable"));
        }
    }

    /** Decodes the content of a file up to a size in bytes. */
    public static TextFile of(byte[] bytes, int mostBytes) {
        return bytes.length > mostBytes ? missing(tooLarge(bytes.length, mostBytes)) : of(bytes);
    }

    /** Decodes the content of a file. */
    public static TextFile of(byte[] bytes) {
        if (looksLikeUtf16(bytes)) {
            return new TextFile(Optional.empty(), List.of(new TextFault(1, text("utf-16"))));
        }
        List<TextFault> faults = new ArrayList<>();
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        while (result.isError()) {
            if (faults.isEmpty()) {
                faults.add(
                        new TextFault(
                                lineAt(bytes, in.position()),
                                text("not-utf-8", "0x%02X".formatted(bytes[in.position()]))));
            }
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
            faults.add(
                    new TextFault(
                            1 + (int) text.chars().limit(nul).filter(c -> c == '\n').count(),
                            text("nul")));
        }
        return new TextFile(Optional.of(text), faults);
    }

    /** A file that can't be used, for this reason. */
    public static TextFile missing(String words) {
        return new TextFile(Optional.empty(), List.of(new TextFault(0, words)));
    }

    private static String text(String key, Object... values) {
        return Phrase.of("text", key, values).shown();
    }

    private static String tooLarge(long bytes, int mostBytes) {
        return text("too-large", bytes / 1e6, mostBytes / 1e6);
    }

    private static boolean looksLikeUtf16(byte[] bytes) {
        if (bytes.length < 2) {
            return false;
        }
        int mark = (bytes[0] & 0xFF) << 8 | bytes[1] & 0xFF;
        int looked = Math.min(bytes.length, 1000);
        long nuls = 0;
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
}
