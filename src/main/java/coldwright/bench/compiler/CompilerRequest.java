package coldwright.bench.compiler;

import coldwright.bench.compile.SnippetSource;
import coldwright.bench.remote.RecordWire;

import java.util.List;

/** What the program asks of the compiling process. */
public sealed interface CompilerRequest {
    /** The program's messages: a hundred thousand items. */
    RecordWire<CompilerRequest> WIRE = new RecordWire<>(CompilerRequest.class, 100_000, 0);

    /**
     * Compile a snippet after those that are compiled. Answered by {@link CompilerReply.Compiled},
     * {@link CompilerReply.Rejected} or {@link CompilerReply.Worn}.
     *
     * @param above how many of the compiled snippets to keep
     * @param language of the messages, a language tag
     */
    record Compile(int above, SnippetSource snippet, String language) implements CompilerRequest {}

    /**
     * Find the valid names at a caret. Answered by {@link CompilerReply.Names}.
     *
     * @param above the snippets above
     */
    record Complete(List<String> above, String text, int caret) implements CompilerRequest {}

    /** Give up finding names. Has no answer of its own. */
    record Hurry() implements CompilerRequest {}

    /**
     * Find the lines of a compiled snippet in a stack trace. Answered by {@link
     * CompilerReply.Lines}.
     *
     * @param step its index, from 0; those after it are forgotten
     */
    record Trace(List<StackTraceElement> trace, int step) implements CompilerRequest {}
}
