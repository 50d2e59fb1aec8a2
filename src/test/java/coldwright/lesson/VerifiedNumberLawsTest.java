package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A held number is found whatever stands around it, and its reader sees the number alone. */
class VerifiedNumberLawsTest {
    private static final String HEAD = "# t\n\n## s\n\n```java\ndouble a = 3;\n```\n\n";

    private static final String[] WORDS = {
        "oats",
        "**malt**",
        "*rum*,",
        "`a < 3`",
        "5 %",
        "−3",
        "[page](b.html)",
        "\\*",
        "&amp;",
        "(about",
        "2)",
        "ü",
        "<!-- own -->",
        "7 < 8",
        "e.g.",
        "a_b",
        "\"so\"",
        "–",
        "**",
        "4<!-- = a -->",
        "1200"
    };

    private static String words(Draw draw) {
        return String.join(" ", draw.listOf(0, 8, d -> d.oneOf(WORDS)));
    }

    private static String margins(Draw draw) {
        return draw.oneOf("", "- ", "> ", "1. ", "> - ", "### ");
    }

    @Cases(1000)
    void survivesAnyTextAroundIt(Draw draw) {
        String margin = draw.one(VerifiedNumberLawsTest::margins);
        String before = draw.one(VerifiedNumberLawsTest::words);
        String after = draw.one(VerifiedNumberLawsTest::words);
        int hundredths = draw.intIn(-99999, 99999);
        int decimals = draw.intIn(0, 2);
        String written =
                String.format(Locale.ROOT, "%." + decimals + "f", hundredths / 100.0)
                        .replace('-', '−');
        String start = margin + "So " + before + " ";
        String text = start + written + "<!-- = a.b(c > 2 ? 1 : 0) --> " + after;
        Lesson lesson = LessonReader.read("a.md", HEAD + text + "\n");
        assertEquals(List.of(), lesson.faults());
        LessonPart.Prose prose = (LessonPart.Prose) lesson.steps().get(0).parts().get(1);
        VerifiedNumber verifiedNumber =
                new VerifiedNumber(9, written, "a.b(c > 2 ? 1 : 0)", 0.5 * Math.pow(10, -decimals));
        assertTrue(
                prose.verifiedNumbers().contains(verifiedNumber),
                () -> prose.verifiedNumbers().toString());
        Lesson bare = LessonReader.read("a.md", HEAD + start + written + " " + after + "\n");
        assertEquals(shown((LessonPart.Prose) bare.steps().get(0).parts().get(1)), shown(prose));
    }

    private static String shown(LessonPart.Prose prose) {
        return prose.nodes().stream().map(ProseCleaner::wordsOf).collect(Collectors.joining("\n"));
    }

    @Cases(1000)
    void isHeldToHalfOfItsLastDigit(Draw draw) {
        int last = draw.intIn(-99999, 99999);
        int decimals = draw.intIn(0, 4);
        int percentOfDigit = draw.intIn(-200, 200);
        double digit = Math.pow(10, -decimals);
        String written =
                String.format(Locale.ROOT, "%." + decimals + "f", last * digit).replace('-', '−');
        VerifiedNumber verifiedNumber = VerifiedNumber.toItsLastDigit(1, written, "a");
        double given = (last + percentOfDigit / 100.0) * digit;
        assertEquals(
                Math.abs(percentOfDigit) <= 50,
                verifiedNumber.passes(given),
                written + " " + given);
        assertFalse(verifiedNumber.passes(Double.NaN));
    }
}
