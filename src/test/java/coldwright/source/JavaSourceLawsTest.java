package coldwright.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;
import coldwright.source.JavaToken.Kind;

import java.util.List;
import java.util.stream.Collectors;

/** What is true of the tokens of any text, Java or not. */
class JavaSourceLawsTest {
    private static final String[] PIECES = {
        "\"", "'", "\"\"\"", "//", "/*", "*/", "\\", "\n", "\r\n", " ", "(", ")", "[", "]", "{",
        "}", "name", "double", "ß", "𝒳", "\u0000", "−", "0x1e", "1.5e", "-", ".", "..", "5g", "=",
        ">>>=", "->", "::", "@"
    };

    @Cases(2000)
    void theTokensAreTheText(Draw draw) {
        JavaSource source = JavaSource.of(text(draw));
        int at = 0;
        for (JavaToken token : source.tokens()) {
            assertEquals(at, token.start(), token.toString());
            assertTrue(token.end() > token.start(), token.toString());
            at = token.end();
        }
        assertEquals(source.text().length(), at);
    }

    /** What is finished in itself is one token again when it stands alone. */
    @Cases(2000)
    void aTokenAloneIsTheSameToken(Draw draw) {
        JavaSource source = JavaSource.of(text(draw));
        for (JavaToken token : source.tokens()) {
            assertEquals(
                    List.of(new JavaToken(token.kind(), 0, token.end() - token.start())),
                    JavaSource.of(source.text(token)).tokens(),
                    source.text(token));
        }
    }

    /** Blanking what the compiler doesn't see leaves the same code at the same places. */
    @Cases(1000)
    void maskingKeepsTheCode(Draw draw) {
        JavaSource source = JavaSource.of(text(draw));
        String masked = source.masked();
        assertEquals(source.text().length(), masked.length());
        JavaSource again = JavaSource.of(masked);
        assertEquals(unquoted(source), unquoted(again));
        assertEquals(masked, again.masked());
    }

    /** A line that follows finished text is read as if it stood alone. */
    @Cases(1000)
    void aLineEndsAllButBlocks(Draw draw) {
        JavaSource first = JavaSource.of(text(draw));
        boolean open =
                first.unclosedComment().isPresent()
                        || first.tokens().stream().anyMatch(one -> one.kind() == Kind.TEXT_BLOCK);
        JavaSource both = JavaSource.of(first.text() + "\nint x;");
        List<JavaToken> code = both.code();
        if (!open) {
            assertEquals(
                    "int x ;",
                    code.subList(code.size() - 3, code.size()).stream()
                            .map(both::text)
                            .collect(Collectors.joining(" ")));
        }
    }

    private static List<JavaToken> unquoted(JavaSource source) {
        return source.code().stream().filter(token -> !token.isQuoted()).toList();
    }

    private static String text(Draw draw) {
        return draw.anyBoolean()
                ? draw.brokenText(255)
                : String.join("", draw.listOf(0, 40, one -> one.oneOf(PIECES)));
    }
}
