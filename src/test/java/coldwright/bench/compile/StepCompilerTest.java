package coldwright.bench.compile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.remote.Order;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/** Steps in the pile, the numbers in them, the traces they leave. */
final class StepCompilerTest {
    private final StepCompiler compiler =
            new StepCompiler(List.of(), List.of("import java.util.*;"));

    @AfterEach
    void close() {
        compiler.close();
    }

    private CompiledStep compile(String text) throws CompilationFailedException {
        return compiler.compile(text, () -> false);
    }

    @Test
    void bringsEveryClassAgainAfterARewind() throws CompilationFailedException {
        String text = "double twice(double x) { return 2 * x; }\ntwice(4)";
        List<Order> orders = compile(text).orders(false, Map.of());
        compiler.rewindTo(0);
        assertEquals(
                orders.stream().filter(Order.Define.class::isInstance).count(),
                compile(text).orders(false, Map.of()).stream()
                        .filter(Order.Define.class::isInstance)
                        .count());
    }

    @Test
    void aRefusedStepLeavesThePileAsItWas() throws CompilationFailedException {
        compile("double sugar = 120;");
        assertThrows(CompilationFailedException.class, () -> compile("double sugar = \"much\";"));
        assertThrows(CompilationFailedException.class, () -> compile("double fine = 1;\nnope();"));
        assertEquals(1, compiler.steps().size());
        assertEquals(Optional.of("double"), compile("sugar").type());
        assertFalse(compiler.worn());
        assertThrows(CompilationFailedException.class, () -> compile("fine"));
    }

    @Test
    void restoresWhatAStepDeclaredOver() throws CompilationFailedException {
        compile("double sugar = 120;\ndouble half() { return sugar / 2; }");
        compile("double sugar = 7;\ndouble half() { return 0; }");
        compiler.rewindTo(1);
        assertFalse(compiler.worn());
        assertEquals(Optional.of("double"), compile("sugar + half()").type());
    }

    @Test
    void isWornOnceADeclaredClassIsGone() throws CompilationFailedException {
        compile("class Tub { }");
        compiler.rewindTo(0);
        assertTrue(compiler.worn());
    }

    @Test
    void givesUpWhenAsked() {
        assertThrows(
                CancellationException.class,
                () -> compiler.compile("double a = 1;\ndouble b = 2;", () -> true));
        assertEquals(0, compiler.steps().size());
    }

    @Test
    void takesADollarSignInTextsAndComments() throws CompilationFailedException {
        assertEquals(Optional.of("String"), compile("var price = \"$5\"; // or $6\nprice").type());
    }

    private static SnippetSource turned(CompiledStep step, String number, double value) {
        return new SnippetSource(
                step.text().replace(number, String.valueOf(value)),
                step.text(),
                Map.of(step.text().indexOf(number), value));
    }

    @Test
    void takesDialsForTheNumbersThatItDeclares() throws CompilationFailedException {
        CompiledStep step = compile("double sugar = 120; // dial\nint n = 3;\nsugar * n");
        StepRun run =
                step.with(
                                new SnippetSource(
                                        "double sugar = 80.5; // dial\nint n = -4;\nsugar * n",
                                        step.text(),
                                        Map.of(15, 80.5, 36, -4.0)))
                        .orElseThrow();
        List<Order> assigns =
                run.orders(false).stream().filter(Order.Assign.class::isInstance).toList();
        assertEquals(80.5, ((Order.Assign) assigns.get(0)).value());
        assertEquals(-4, ((Order.Assign) assigns.get(1)).value());
        assertNotEquals(step.with(SnippetSource.of(step.text())), Optional.of(run));
    }

    @Test
    void takesNothingElseForItself() throws CompilationFailedException {
        CompiledStep step = compile("double sugar = 120;\nint n = 30;\nvar d = \"7\";\nsugar * 2");
        assertEquals(Optional.empty(), step.with(SnippetSource.of(step.text() + "\n")));
        assertEquals(Optional.empty(), step.with(turned(step, "120", Double.NaN)));
        assertEquals(Optional.empty(), step.with(turned(step, "120", 1 / 0.0)));
        assertEquals(Optional.empty(), step.with(turned(step, "30", 3.5)));
        assertEquals(Optional.empty(), step.with(turned(step, "30", 1e10)));
        assertEquals(Optional.empty(), step.with(turned(step, "7", 8)));
        assertEquals(Optional.empty(), step.with(turned(step, "2\n", 3)), "not there: −1");
        assertEquals(Optional.empty(), step.with(turned(step, "* 2", 3)), "in no declaration");
    }

    @Test
    void knowsWhatLeavesNoTraces() throws CompilationFailedException {
        for (String quiet :
                List.of(
                        "double a = Math.sqrt(2) + new Random(1).nextInt();",
                        "record Scoop(int g) { }\nvar s = List.of(new Scoop(3)).stream().mapToInt(Scoop::g).sum();",
                        "System.out.printf(\"%.1f%n\", 2.0);\nfor (int i = 0; i < 3; i++) System.out.println(i + \" g\");",
                        "try { Integer.parseInt(\"a\"); } catch (NumberFormatException e) { System.out.println(e.getMessage()); }")) {
            assertTrue(compile(quiet).hasNoSideEffects(), quiet);
        }
    }

    @Test
    void suspectsWhatMayLeaveTraces() throws CompilationFailedException {
        for (String loud :
                List.of(
                        "System.setProperty(\"a\", \"b\");",
                        "Locale.setDefault(Locale.ROOT);",
                        "new Thread(() -> { }).start();",
                        "Runnable r = System::gc;",
                        "Object f = new java.io.File(\"x\");",
                        "try { int x = 1; } catch (Throwable t) { }",
                        "for (int i = 0; i < 1; i++) { try { i++; } finally { i--; } }",
                        "System.setOut(null);",
                        "Class.forName(\"java.lang.String\").getDeclaredFields();",
                        "Runtime.getRuntime().exit(0);")) {
            assertFalse(compile(loud).hasNoSideEffects(), loud);
        }
    }
}
