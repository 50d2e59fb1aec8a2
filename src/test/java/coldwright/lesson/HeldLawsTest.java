package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A held number is found whatever stands around it, and its reader sees the number alone. */
class HeldLawsTest {
    private static final String HEAD = "# t\n\n## s\n\n```java\ndouble a = 3;\n```\n\n";

    @Provide
    Arbitrary<String> words() {
        return Arbitraries.of(
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
                        "1200")
                .list()
                .ofMaxSize(8)
                .map(all -> String.join(" ", all));
    }

    @Provide
    Arbitrary<String> margins() {
        return Arbitraries.of("", "- ", "> ", "1. ", "> - ", "### ");
    }

    @Property
    void survivesAnyTextAroundIt(
            @ForAll("margins") String margin,
            @ForAll("words") String before,
            @ForAll("words") String after,
            @ForAll @IntRange(min = -99999, max = 99999) int hundredths,
            @ForAll @IntRange(min = 0, max = 2) int decimals) {
        String written =
                String.format(Locale.ROOT, "%." + decimals + "f", hundredths / 100.0)
                        .replace('-', '−');
        String start = margin + "So " + before + " ";
        String text = start + written + "<!-- = a.b(c > 2 ? 1 : 0) --> " + after;
        Lesson lesson = LessonReader.read("a.md", HEAD + text + "\n");
        assertEquals(List.of(), lesson.faults());
        Part.Prose prose = (Part.Prose) lesson.steps().get(0).parts().get(1);
        Held held = new Held(9, written, "a.b(c > 2 ? 1 : 0)", 0.5 * Math.pow(10, -decimals));
        assertTrue(prose.held().contains(held), () -> prose.held().toString());
        Lesson bare = LessonReader.read("a.md", HEAD + start + written + " " + after + "\n");
        assertEquals(shown((Part.Prose) bare.steps().get(0).parts().get(1)), shown(prose));
    }

    private static String shown(Part.Prose prose) {
        return prose.nodes().stream().map(ProseMender::wordsOf).collect(Collectors.joining("\n"));
    }

    @Property
    void isHeldToHalfOfItsLastDigit(
            @ForAll @IntRange(min = -99999, max = 99999) int last,
            @ForAll @IntRange(min = 0, max = 4) int decimals,
            @ForAll @IntRange(min = -200, max = 200) int percentOfDigit) {
        double digit = Math.pow(10, -decimals);
        String written =
                String.format(Locale.ROOT, "%." + decimals + "f", last * digit).replace('-', '−');
        Held held = Held.toItsLastDigit(1, written, "a");
        double given = (last + percentOfDigit / 100.0) * digit;
        assertEquals(Math.abs(percentOfDigit) <= 50, held.holds(given), written + " " + given);
        assertFalse(held.holds(Double.NaN));
    }
}
