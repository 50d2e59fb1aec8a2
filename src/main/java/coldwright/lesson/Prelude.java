package coldwright.lesson;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The imports of every snippet. */
public final class Prelude {
    private static final String RESOURCE = "prelude.txt";

    private Prelude() {}

    /** Complete declarations that are added, invisibly, above each snippet. */
    public static List<String> imports() {
        try (InputStream in = Prelude.class.getResourceAsStream(RESOURCE)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
