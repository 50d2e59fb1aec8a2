package coldwright.terminal.console;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** An output in UTF-8 that knows why it failed; a plain print stream only knows that it did. */
public final class WatchedOutput extends PrintStream {
    private final Failures failures;

    public WatchedOutput(OutputStream to) {
        this(new Failures(to));
    }

    private WatchedOutput(Failures failures) {
        super(failures, true, StandardCharsets.UTF_8);
        this.failures = failures;
    }

    /**
     * Why output was lost, in the system's words; empty if none was, or if only the reader of a
     * pipe left, such as {@code head}.
     */
    Optional<String> failure() {
        return Optional.ofNullable(failures.first).filter(why -> !why.matches("(?is).*pipe.*"));
    }

    private static final class Failures extends FilterOutputStream {
        private String first;

        Failures(OutputStream to) {
            super(to);
        }

        @Override
        public void write(byte[] bytes, int from, int count) throws IOException {
            try {
                out.write(bytes, from, count);
            } catch (IOException e) {
                first = first == null ? String.valueOf(e.getMessage()) : first;
                throw e;
            }
        }
    }
}
