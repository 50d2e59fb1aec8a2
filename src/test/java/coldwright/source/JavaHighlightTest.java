package coldwright.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.stream.Collectors;

class JavaHighlightTest {
    @Test
    void coloursASnippet() {
        assertEquals(
                "KEYWORD:double NUMBER:40 DIAL:// dial 0 to 300 step 5 g",
                wordsOf("double sugar = 40; // dial 0 to 300 step 5 g"));
        assertEquals(
                "KEYWORD:var TYPE:Mix NUMBER:600 CONSTANT:BLOOD_ORANGE_JUICE COMMENT:// juice",
                wordsOf("var mix = Mix.of(grams(600, BLOOD_ORANGE_JUICE)); // juice"));
        assertEquals(
                "STRING:\"a \\\" // b\" COMMENT:/* c */", wordsOf("x(\"a \\\" // b\") /* c */"));
    }

    @Test
    void readsNumbersWhole() {
        assertEquals("NUMBER:1.5e-3", wordsOf("1.5e-3"));
        assertEquals("NUMBER:.5 NUMBER:1_000", wordsOf(".5+1_000"));
        assertEquals("NUMBER:0x1e NUMBER:1", wordsOf("0x1e-1"));
        assertEquals("", wordsOf("x1.y2"));
    }

    @Test
    void leavesOpenTextOpenOnlyAsFarAsJavaWould() {
        assertEquals("STRING:\"open KEYWORD:int", wordsOf("\"open\nint x"));
        assertEquals("COMMENT:/* open\nint x", wordsOf("/* open\nint x"));
        assertEquals("STRING:\"\"\"\nint\n\"x", wordsOf("\"\"\"\nint\n\"x"));
        assertEquals("STRING:\"\\", wordsOf("\"\\"));
    }

    @Cases(1000)
    void neverOverlapsAndStaysInside(Draw draw) {
        String java = draw.brokenText(255);
        int before = 0;
        for (JavaHighlight word : JavaHighlight.in(java)) {
            assertTrue(word.start() >= before && word.end() > word.start(), word.toString());
            before = word.end();
        }
        assertTrue(before <= java.length());
    }

    @Test
    void takesALongTextInItsStride() {
        String longComment = "/*" + "*x".repeat(500_000);
        assertEquals(
                List.of(new JavaHighlight(0, 1_000_002, JavaHighlight.Kind.COMMENT)),
                JavaHighlight.in(longComment));
    }

    private static String wordsOf(String java) {
        return JavaHighlight.in(java).stream()
                .map(word -> word.kind() + ":" + java.substring(word.start(), word.end()))
                .collect(Collectors.joining(" "));
    }
}
