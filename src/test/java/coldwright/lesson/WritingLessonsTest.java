package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.api.Test;

import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Field;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

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

    @Test
    void theTemplateHasEachKindOfForecastAndBlock() throws IOException {
        try (InputStream in = Lesson.class.getResourceAsStream("template.md")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            for (String kind :
                    List.of(
                            "\n- * ",
                            "\nnumber:",
                            "\ncurve:",
                            "```java given",
                            "```java solution")) {
                assertTrue(text.contains(kind), kind);
            }
        }
    }

    @Test
    void thePageOfNamesReadsWithoutFaultsAndNamesEveryIngredient() throws IOException {
        String text = Files.readString(Path.of("docs/names.md"));
        assertEquals(List.of(), LessonReader.read("names.md", text).faults());
        Set<String> words = new HashSet<>(List.of(text.split("\\W+")));
        List<String> missing =
                Arrays.stream(Shelf.class.getFields())
                        .filter(field -> field.getType() == Ingredient.class)
                        .map(Field::getName)
                        .filter(name -> !words.contains(name))
                        .toList();
        assertEquals(List.of(), missing);
    }

    private static void assertHasOneOfEach(Lesson lesson) {
        List<LessonPart> parts =
                lesson.steps().stream().flatMap(step -> step.parts().stream()).toList();
        assertTrue(parts.stream().anyMatch(LessonPart.Prediction.class::isInstance), "a forecast");
        assertTrue(parts.stream().anyMatch(LessonPart.Check.class::isInstance), "a check");
        assertTrue(
                parts.stream()
                        .anyMatch(p -> p instanceof LessonPart.Snippet s && !s.dials().isEmpty()),
                "a dial");
    }
}
