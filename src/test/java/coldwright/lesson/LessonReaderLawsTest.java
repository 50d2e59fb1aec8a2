package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/** Whatever an author does to a lesson, reading it ends in a lesson whose lines are true. */
class LessonReaderLawsTest {
    private static final List<String> LINES =
            List.of(
                    "# Oats",
                    "## Toast",
                    "## Eat",
                    "",
                    "",
                    "Words.",
                    "<!--",
                    "-->",
                    "track: Grain",
                    "```java",
                    "```java given",
                    "```forecast",
                    "```check",
                    "```",
                    "~~~",
                    "    ```",
                    "- * yes",
                    "- no",
                    "-",
                    "number: 3 g within 1",
                    "curve: a 0 to 4; b 1 to 3 g",
                    "```teacher",
                    "At 3<!-- = a --> and <!-- = b",
                    "<!-- = a -->",
                    "double a = 3; // dial 0 to 9 step 1 g",
                    "String b = \"// dial 0 to 9",
                    "a is 3 within 0 -- said",
                    "'\\",
                    "<div>",
                    "> > ```java",
                    "![a](b) <i> [c](d)",
                    "\u0000\uFFFD");

    private static List<String> lines(Draw draw) {
        return draw.listOf(0, 40, d -> d.oneOf(LINES));
    }

    @Cases(1000)
    void partsStandWhereTheirLineSays(Draw draw) {
        List<String> lines = draw.one(LessonReaderLawsTest::lines);
        Lesson lesson = LessonReader.read("a.md", String.join("\n", lines));
        assertFalse(lesson.title().isBlank());
        Stream<LessonPart> parts =
                Stream.concat(
                        lesson.opening().stream(),
                        lesson.steps().stream().flatMap(step -> step.parts().stream()));
        parts.forEach(part -> assertTrueLine(part, lines));
        for (LessonStep step : lesson.steps()) {
            String heading = lines.get(step.line() - 1);
            assertTrue(heading.startsWith("##") || lines.contains("-"), heading);
        }
        for (LessonFault fault : lesson.faults()) {
            assertTrue(
                    fault.line() >= 0 && fault.line() <= Math.max(1, lines.size()),
                    fault::toString);
            assertEquals(1, fault.words().lines().count());
        }
    }

    private static void assertTrueLine(LessonPart part, List<String> lines) {
        String line = lines.get(part.line() - 1);
        if (part instanceof LessonPart.Snippet snippet) {
            assertEquals(snippet.given() ? "```java given" : "```java", line);
            String first = lines.get(part.line()).replace((char) 0, (char) 0xFFFD);
            assertTrue(first.startsWith(snippet.code().lines().findFirst().get()), snippet.code());
            for (Dial dial : snippet.dials()) {
                assertEquals("3", snippet.code().substring(dial.start(), dial.end()));
            }
        } else if (part instanceof LessonPart.Prediction) {
            assertEquals("```forecast", line);
        } else if (part instanceof LessonPart.Check) {
            assertEquals("```check", line);
        } else if (part instanceof LessonPart.Teacher) {
            assertEquals("```teacher", line);
        }
    }

    @Cases(1000)
    void noTextIsTooStrange(Draw draw) {
        String text = draw.brokenText(255);
        isSound(LessonReader.read("a.md", text), text);
    }

    @Cases(1000)
    void noBytesAreTooStrange(Draw draw) {
        byte[] bytes = draw.bytes(255);
        isSound(LessonReader.read("a.md", bytes), new String(bytes, StandardCharsets.ISO_8859_1));
    }

    /** All that a lesson says of its text is about lines that the text has, in their order. */
    private static void isSound(Lesson lesson, String text) {
        assertFalse(lesson.title().isBlank());
        int lines = text.split("\r\n|\r|\n", -1).length;
        int before = 0;
        for (LessonStep step : lesson.steps()) {
            assertTrue(step.line() > before && step.line() <= lines, step.title());
            before = step.line();
        }
        for (LessonFault fault : lesson.faults()) {
            assertTrue(fault.line() >= 0 && fault.line() <= lines, fault::toString);
            assertEquals(1, fault.words().lines().count());
        }
    }
}
