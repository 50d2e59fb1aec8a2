package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** What the guide and the template show must read without a fault. */
class WritingLessonsTest {
    private static final String FENCE = "````";

    @Test
    void theGuidesExampleReadsWithoutFaults() throws IOException {
        String guide = Files.readString(Path.of("docs/writing-lessons.md"));
        int start = guide.indexOf('\n', guide.indexOf(FENCE + "markdown")) + 1;
        Lesson lesson =
                LessonReader.read("guide.md", guide.substring(start, guide.indexOf(FENCE, start)));
        assertEquals(List.of(), lesson.faults());
        assertHasOneOfEach(lesson);
    }

    @Test
    void theTemplateReadsWithoutFaults() throws IOException {
        try (InputStream in = Lesson.class.getResourceAsStream("template.md")) {
            Lesson lesson = LessonReader.read("template.md", in.readAllBytes());
            assertEquals(List.of(), lesson.faults());
            assertHasOneOfEach(lesson);
        }
    }

    private static void assertHasOneOfEach(Lesson lesson) {
        List<Part> parts = lesson.steps().stream().flatMap(step -> step.parts().stream()).toList();
        assertTrue(parts.stream().anyMatch(Part.Forecast.class::isInstance), "a forecast");
        assertTrue(parts.stream().anyMatch(Part.Check.class::isInstance), "a check");
        assertTrue(
                parts.stream().anyMatch(p -> p instanceof Part.Snippet s && !s.dials().isEmpty()),
                "a dial");
    }
}
