package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

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

    @Provide
    Arbitrary<List<String>> lines() {
        return Arbitraries.of(LINES).list().ofMaxSize(40);
    }

    @Property
    void partsStandWhereTheirLineSays(@ForAll("lines") List<String> lines) {
        Lesson lesson = LessonReader.read("a.md", String.join("\n", lines));
        assertFalse(lesson.title().isBlank());
        Stream<Part> parts =
                Stream.concat(
                        lesson.opening().stream(),
                        lesson.steps().stream().flatMap(step -> step.parts().stream()));
        parts.forEach(part -> assertTrueLine(part, lines));
        for (Step step : lesson.steps()) {
            String heading = lines.get(step.line() - 1);
            assertTrue(heading.startsWith("##") || lines.contains("-"), heading);
        }
        for (Fault fault : lesson.faults()) {
            assertTrue(
                    fault.line() >= 0 && fault.line() <= Math.max(1, lines.size()),
                    fault::toString);
            assertEquals(1, fault.words().lines().count());
        }
    }

    private static void assertTrueLine(Part part, List<String> lines) {
        String line = lines.get(part.line() - 1);
        if (part instanceof Part.Snippet snippet) {
            assertEquals(snippet.given() ? "```java given" : "```java", line);
            String first = lines.get(part.line()).replace((char) 0, (char) 0xFFFD);
            assertTrue(first.startsWith(snippet.code().lines().findFirst().get()), snippet.code());
            for (Dial dial : snippet.dials()) {
                assertEquals("3", snippet.code().substring(dial.start(), dial.end()));
            }
        } else if (part instanceof Part.Forecast) {
            assertEquals("```forecast", line);
        } else if (part instanceof Part.Check) {
            assertEquals("```check", line);
        } else if (part instanceof Part.Teacher) {
            assertEquals("```teacher", line);
        }
    }

    @Property
    void noTextIsTooStrange(@ForAll String text) {
        assertFalse(LessonReader.read("a.md", text).title().isEmpty());
    }

    @Property
    void noBytesAreTooStrange(@ForAll byte[] bytes) {
        assertFalse(LessonReader.read("a.md", bytes).title().isEmpty());
    }
}
