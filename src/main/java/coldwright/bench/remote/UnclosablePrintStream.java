package coldwright.bench.remote;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** {@code System.out} as snippets have it: closing it closes nothing. */
final class UnclosablePrintStream extends PrintStream {
    UnclosablePrintStream(TextOutput under) {
        super(under, false, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        flush();
    }
}
