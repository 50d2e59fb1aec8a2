package coldwright.bench.compiler;

import coldwright.bench.compile.CompileProblem;
import coldwright.bench.compile.CompiledStep;
import coldwright.bench.complete.CompletionProposal;
import coldwright.bench.remote.RecordWire;

import java.util.List;
import java.util.Optional;

/** What the compiling process answers. */
public sealed interface CompilerReply {
    /** The replies: a hundred thousand items, classes up to 16 MB. */
    RecordWire<CompilerReply> WIRE = new RecordWire<>(CompilerReply.class, 100_000, 1 << 24);

    /** The snippet is compiled: its text as compiled, or as written if a dial doesn't fit. */
    record Compiled(CompiledStep step) implements CompilerReply {}

    /** The snippet doesn't compile; the positions are those of its text as written. */
    record Rejected(List<CompileProblem> problems) implements CompilerReply {}

    /** There is a new compiler, which has no snippets: begin again with the first. */
    record Worn() implements CompilerReply {}

    /** The names at the caret; empty if it gave up. */
    record Names(Optional<List<CompletionProposal>> names) implements CompilerReply {}

    /** The lines of the snippet, from 1, innermost call first. */
    record Lines(List<Integer> lines) implements CompilerReply {}

    /** The compiler can't be made. */
    record Broken(String why) implements CompilerReply {}
}
