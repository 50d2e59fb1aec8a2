package coldwright.bench.compiler;

import coldwright.bench.compile.CompilationFailedException;
import coldwright.bench.compile.CompiledStep;
import coldwright.bench.compile.SnippetSource;
import coldwright.bench.compile.StepCompiler;
import coldwright.bench.complete.NameCompleter;
import coldwright.bench.process.LaunchSettings;
import coldwright.bench.remote.ProgramLink;
import coldwright.words.Words;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The main class of the compiling process. */
public final class CompilerMain {
    /** Java's compiler calls itself for each operator and bracket of an expression. */
    private static final long STACK_BYTES = 16 << 20;

    private final List<Path> classPath;
    private final List<String> imports;
    private final ProgramLink<CompilerRequest, CompilerReply> program;
    private final NameCompleter completer = new NameCompleter(this::newCompiler);
    private StepCompiler compiler;

    private CompilerMain(String[] args) {
        classPath =
                Stream.of(args[1].split(Pattern.quote(File.pathSeparator))).map(Path::of).toList();
        imports = List.of(args).subList(2, args.length);
        program = new ProgramLink<>(CompilerRequest.WIRE, CompilerReply.WIRE, Path.of(args[0]));
    }

    /**
     * Serves until the program is gone.
     *
     * @param args this process' folder, the class path for snippets, the imports
     */
    public static void main(String[] args) {
        CompilerMain main = new CompilerMain(args);
        new Thread(null, main::serve, "compiler", STACK_BYTES).start();
    }

    /** Ends with whatever the compiler throws: then nothing that it compiled can be relied on. */
    private void serve() {
        try {
            warmUp();
            while (true) {
                CompilerRequest request = program.take();
                if (!(request instanceof CompilerRequest.Hurry)) {
                    program.send(reply(request));
                }
            }
        } catch (StackOverflowError e) {
            Runtime.getRuntime().halt(LaunchSettings.OVERLOADED);
        } catch (IOException | InterruptedException e) {
            // the program is gone
        } finally {
            Runtime.getRuntime().halt(1);
        }
    }

    private CompilerReply reply(CompilerRequest request) {
        try {
            if (request instanceof CompilerRequest.Compile compile) {
                Words.show(Locale.forLanguageTag(compile.language()));
                return compile(compile.above(), compile.snippet());
            } else if (request instanceof CompilerRequest.Complete wanted) {
                return new CompilerReply.Names(
                        Optional.of(
                                completer.complete(
                                        wanted.above(),
                                        wanted.text(),
                                        wanted.caret(),
                                        program::moreCame)));
            } else if (request instanceof CompilerRequest.Trace wanted) {
                compiler.rewindTo(wanted.step() + 1);
                return new CompilerReply.Lines(
                        compiler.places(wanted.trace()).stream()
                                .filter(place -> place.step() == wanted.step())
                                .map(StepCompiler.StackPosition::line)
                                .toList());
            }
        } catch (CancellationException e) {
            return new CompilerReply.Names(Optional.empty());
        } catch (IllegalArgumentException e) {
            return new CompilerReply.Broken(e.getMessage());
        }
        throw new AssertionError(request);
    }

    private CompilerReply compile(int above, SnippetSource snippet) {
        compiler().rewindTo(above);
        if (compiler.worn() || compiler.steps().size() < above) {
            return new CompilerReply.Worn();
        }
        if (!snippet.text().equals(snippet.compiledText())) {
            try {
                CompiledStep step = compiler.compile(snippet.compiledText(), () -> false);
                if (step.with(snippet).isPresent()) {
                    return new CompilerReply.Compiled(step);
                }
                compiler.rewindTo(above);
            } catch (CompilationFailedException e) {
                // checked in the text as written, so that positions match what the learner sees
            }
        }
        try {
            return new CompilerReply.Compiled(compiler.compile(snippet.text(), () -> false));
        } catch (CompilationFailedException e) {
            return new CompilerReply.Rejected(e.complaints());
        }
    }

    /** Compiles something so that the compiler is warm for the first run. */
    private void warmUp() {
        try {
            compiler()
                    .compile("double warm = 0.5; System.out.println(warm); warm * 2;", () -> false);
            compiler.rewindTo(0);
        } catch (CompilationFailedException | IllegalArgumentException e) {
            // the first run will report it
        }
    }

    private StepCompiler compiler() {
        if (compiler != null && compiler.worn()) {
            compiler.close();
            compiler = null;
        }
        if (compiler == null) {
            compiler = newCompiler();
        }
        return compiler;
    }

    private StepCompiler newCompiler() {
        return new StepCompiler(classPath, imports);
    }
}
