package coldwright.bench.compile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Locale;

/** The sentences do not depend on the language of the machine. */
final class CompilerMessagesTest {
    @Test
    void asksInEnglishOnAJapaneseMachine() {
        Locale own = Locale.getDefault();
        Locale.setDefault(Locale.JAPANESE);
        try (StepCompiler compiler = new StepCompiler(List.of(), List.of())) {
            CompilationFailedException refused =
                    assertThrows(
                            CompilationFailedException.class,
                            () -> compiler.compile("double sugar = \"much\";", () -> false));
            assertEquals(
                    "The variable `sugar` takes a number (double), not a string.",
                    refused.complaints().get(0).words());
            assertEquals(Locale.JAPANESE, Locale.getDefault());
        } finally {
            Locale.setDefault(own);
        }
    }
}
