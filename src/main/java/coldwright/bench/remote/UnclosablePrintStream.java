package coldwright.bench.remote;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** The {@code System.out} of snippets: closing it has no effect. */
final class UnclosablePrintStream extends PrintStream {
    UnclosablePrintStream(TextOutput under) {
        super(under, false, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        flush();
    }
}
