package coldwright.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.terminal.console.ExitCode;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** {@code batch -} and {@code balance -} read standard input. */
class StandardInputTest {
    private final InputStream before = System.in;

    @AfterEach
    void putBack() {
        System.setIn(before);
    }

    private static TypedSession typed(String text, int exit, String... words) {
        System.setIn(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        TypedSession session = TypedSession.nobody();
        assertEquals(exit, session.obey(words), session.err());
        return session;
    }

    @Test
    void aBatchIsReadAsFromAFile() {
        TypedSession session =
                typed("ingredient,grams\nwater,800\nsucrose,200\n", ExitCode.DONE, "batch", "-");
        assertTrue(session.out().contains("water 80.0 %"), session.out());
    }

    @Test
    void aBalanceTakesATotalInLitres() {
        TypedSession session =
                typed(
                        "total: 1 l\ntarget: sucrose 20 %\n\ningredient,grams\nwater,\nsucrose,\n",
                        ExitCode.DONE, "balance", "-", "--json");
        assertTrue(session.out().contains("\"schema_version\" : 1"), session.out());
    }

    @Test
    void anErrorNamesStandardInputAndTheLine() {
        TypedSession session = typed("colour: red\ningredient,grams\nwater,5\n", 2, "batch", "-");
        assertTrue(session.err().contains("standard input:1: "), session.err());
    }
}
