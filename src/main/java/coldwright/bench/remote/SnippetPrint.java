package coldwright.bench.remote;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** {@code System.out} as snippets have it: closing it closes nothing. */
final class SnippetPrint extends PrintStream {
    SnippetPrint(PrintedText under) {
        super(under, false, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        flush();
    }
}
