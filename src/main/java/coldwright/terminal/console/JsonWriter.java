package coldwright.terminal.console;

import com.fasterxml.jackson.jr.ob.JSON;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;

/** Writes a tree as JSON, one key per line. */
public final class JsonWriter {
    private static final JSON WRITER =
            JSON.std.with(JSON.Feature.PRETTY_PRINT_OUTPUT, JSON.Feature.WRITE_NULL_PROPERTIES);

    private JsonWriter() {}

    public static String of(Map<String, Object> tree) {
        try {
            return WRITER.asString(tree);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
