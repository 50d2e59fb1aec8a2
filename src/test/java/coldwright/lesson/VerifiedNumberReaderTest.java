package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.List;

class VerifiedNumberReaderTest {
    private static final String SNIPPET = "```java\nint a = 1;\n```\n";

    private static List<VerifiedNumber> heldIn(String text) {
        Lesson lesson = LessonReader.read("a.md", "# t\n## s\n" + SNIPPET + text + "\n");
        assertEquals(List.of(), lesson.faults());
        LessonPart part = lesson.steps().get(0).parts().get(1);
        return part instanceof LessonPart.Teacher note
                ? note.verifiedNumbers()
                : ((LessonPart.Prose) part).verifiedNumbers();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "about −2.6<!-- = a --> °C | −2.6 | 0.05",
                "about -2.60<!-- = a --> °C | -2.60 | 0.005",
                "1200<!--= a--> g | 1200 | 0.5",
                "**90<!-- = a --> %** | 90 | 0.5",
                "**90**<!-- = a --> % | 90 | 0.5",
                "2–3<!-- = a --> g | 3 | 0.5",
                "2-3<!-- = a --> g | 3 | 0.5",
                "2 −3<!-- = a --> g | −3 | 0.5",
                "90<!-- = a within 2 --> % | 90 | 2",
                "+0.5<!-- = a within .1 --> % | +0.5 | 0.1",
            })
    void readsTheNumberAndHowFarOffItMayBe(String text, String written, double tolerance) {
        VerifiedNumber verifiedNumber = heldIn(text).get(0);
        assertEquals(written, verifiedNumber.written());
        assertEquals("a", verifiedNumber.expression());
        assertEquals(tolerance, verifiedNumber.tolerance(), 1e-12);
    }

    @Test
    void severalStandInOneLineAndOneOverTwo() {
        assertEquals(
                List.of(
                        new VerifiedNumber(6, "1", "a", 0.5),
                        new VerifiedNumber(6, "2", "a + \" within \"", 0.5),
                        new VerifiedNumber(7, "3", "f(a, b)", 0.5)),
                heldIn(
                        "1<!-- = a --> or 2<!-- = a + \" within \" -->,\nor 3<!-- = f(a,\n b) -->."));
    }

    @Test
    void standsInTeachersNotesToo() {
        assertEquals(
                List.of(new VerifiedNumber(7, "4", "a", 0.5)),
                heldIn("```teacher\nAt 4<!-- = a -->.\n```"));
    }

    @Test
    void standsInExplanations() {
        Lesson lesson =
                LessonReader.read(
                        "a.md",
                        "# t\n## s\n```forecast\nSo?\n- * a\n- b\n\n- At 4<!-- = a -->.\n```\n"
                                + SNIPPET);
        assertEquals(List.of(), lesson.faults());
        LessonPart.Prediction prediction =
                (LessonPart.Prediction) lesson.steps().get(0).parts().get(0);
        assertEquals(List.of(new VerifiedNumber(8, "4", "a", 0.5)), prediction.verifiedNumbers());
    }

    @Test
    void otherCommentsAreTheAuthorsOwn() {
        assertEquals(List.of(), heldIn("4<!-- a = 4 --> 5<!-- ==== --> 6<!-- -->"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "CRC Handbook, 102nd ed. | true",
                "K. D. Ross, Food Technology 29 (1975) | true",
                "USDA FoodData Central | true",
                "21 CFR 135.110 | true",
                "Codex Stan 243 | true",
                "common practice, no source | false",
                "Ross 1975, from memory | false",
                "colder means more ice | false",
                "1600 g of water at −1500 °C, 2000 % | false",
                "\"\" | false",
            })
    void tellsPublishedSourcesFromReasons(String source, boolean published) {
        assertEquals(published, new CheckExpectation.True(1, "a", source).namesPublishedSource());
    }
}
