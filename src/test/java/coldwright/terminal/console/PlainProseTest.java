package coldwright.terminal.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;

import java.util.ArrayList;
import java.util.List;

class PlainProseTest {
    private static String set(String markdown) {
        List<Node> blocks = new ArrayList<>();
        Node document = Parser.builder().build().parse(markdown);
        for (Node block = document.getFirstChild(); block != null; block = block.getNext()) {
            blocks.add(block);
        }
        return String.join("\n", PlainProse.set(blocks, 30));
    }

    @Test
    void fillsLinesToTheWidth() {
        assertEquals(
                "Oats are *not* toasted in the\npan but on a tray, slowly.",
                set("Oats are \\*not\\* toasted in the pan but\non a **tray**, slowly."));
    }

    @Test
    void partsParagraphsByAnEmptyLine() {
        assertEquals("One.\n\nTwo.\n\nThree", set("One.\n\nTwo.\n\n### Three"));
    }

    @Test
    void setsListsWithHangingLines() {
        assertEquals(
                "  • oats, toasted until they\n    smell of nuts\n\n  • malt\n\n      1. barley",
                set("- oats, toasted until they smell of nuts\n- malt\n\n  1. barley"));
    }

    @Test
    void keepsTheNumbersOfAList() {
        assertEquals("  9. nine\n\n 10. ten", set("9. nine\n10. ten"));
    }

    @Test
    void marksQuotations() {
        assertEquals(
                "  | Caution: hot sugar burns\n  | the skin.\n  |\n  | Wear gloves.",
                set("> Caution: hot sugar burns the skin.\n>\n> Wear gloves."));
    }

    @Test
    void leavesCodeAsItStands() {
        assertEquals(
                "Say `oats`:\n\n    a    line that is much longer than thirty\n\n      b",
                set("Say `oats`:\n\n```\na    line that is much longer than thirty\n\n  b\n```"));
    }

    @Test
    void showsWhereALinkGoes() {
        assertEquals(
                "the table (https://x.org/t)\nand https://x.org",
                set("the [table](https://x.org/t) and <https://x.org>"));
    }

    @Test
    void neverPartsANumberFromItsUnit() {
        assertEquals(
                "At the end of this it is then\n−18 °C, or 70 % of its water.",
                set("At the end of this it is then −18 °C, or 70 % of its water."));
    }

    @Test
    void aHardBreakEndsTheLine() {
        assertEquals("oats\nmalt", set("oats\\\nmalt"));
    }

    @Test
    void aVeryNarrowPlaceStillHoldsText() {
        String deep = "> ".repeat(12) + "some words that need a place to stand";
        assertTrue(set(deep).contains("some words that need"), set(deep));
    }
}
