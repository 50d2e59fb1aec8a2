package coldwright.bench.confine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.BenchClassPath;
import coldwright.bench.compile.CompilationFailedException;
import coldwright.bench.compile.CompileProblem;
import coldwright.bench.compile.StepCompiler;
import coldwright.lesson.Prelude;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.io.IOException;
import java.util.List;

/** Each attempt to leave the list is refused under the name that it uses. Nothing runs. */
final class RefusedSnippetsTest {
    private static StepCompiler compiler;

    @BeforeAll
    static void open() {
        compiler = new StepCompiler(BenchClassPath.ofThisProgram(), Prelude.imports());
    }

    @AfterAll
    static void close() {
        compiler.close();
    }

    static List<SnippetFile> attempts() throws IOException {
        return SnippetFile.read("refused.txt");
    }

    @Test
    void thereAreAtLeast250() throws IOException {
        assertTrue(attempts().size() >= 250);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("attempts")
    void isRefusedWithItsName(SnippetFile attempt) throws CompilationFailedException {
        if (compiler.worn()) {
            close();
            open();
        }
        compiler.rewindTo(0);
        List<String> refusals =
                compiler.compile(attempt.code(), () -> false).refused().stream()
                        .map(CompileProblem::words)
                        .toList();
        assertTrue(
                refusals.stream().anyMatch(one -> one.contains("`" + attempt.expected() + "`")),
                attempt + " gave " + refusals);
    }

    @Test
    void theSentenceSaysWhatToUseInstead() throws CompilationFailedException {
        compiler.rewindTo(0);
        CompileProblem problem =
                compiler.compile("int a = 1;\nSystem.exit(a);", () -> false).refused().get(0);
        assertEquals(
                "Lessons can’t end the program (`java.lang.System.exit`). Let the snippet run to"
                        + " its last line.",
                problem.words());
        assertEquals("int a = 1;\nSystem.".length(), problem.start());
    }
}
