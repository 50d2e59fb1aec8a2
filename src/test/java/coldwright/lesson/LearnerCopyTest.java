package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A copy for learners gives nothing away, and is still a lesson. */
class LearnerCopyTest {
    @Test
    void answersNotesAndChecksAreGone() {
        String lesson =
                """
                # Oats

                It is 140<!-- = heat --> °C.

                ```teacher
                Mind the smoke.
                ```

                ## Toast

                ```forecast
                How hot?
                - cold
                - * hot

                Hot.
                ```

                ```forecast
                How long?
                number: 12 min within 1
                ```

                ```java given
                double heat = 140;
                ```

                ```question
                Why?
                - * it browns
                - it melts -- a belief
                ```

                ```java
                heat
                ```

                ```java solution
                heat + 1
                ```

                ```check
                heat is 140 within 1
                ```

                End.
                """;
        assertEquals(
                """
                # Oats

                It is 140 °C.

                ## Toast

                **What do you predict?** How hot?

                - cold
                - hot

                **What do you predict?** How long?

                My prediction: ________ min

                ```java
                double heat = 140;
                ```

                **Question.** Why?

                - [ ] it browns
                - [ ] it melts

                ```java
                heat
                ```

                End.
                """,
                LearnerCopy.of(lesson));
    }

    static List<Path> lessons() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("lessons"))) {
            return files.sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void eachLessonsCopyIsALessonWithoutFaults(Path file) {
        Lesson lesson = LessonReader.read(file);
        String text = LearnerCopy.of(lesson.text());
        Lesson copy = LessonReader.read("copy.md", text);
        assertEquals(List.of(), copy.faults());
        assertEquals(lesson.steps().size(), copy.steps().size());
        List<LessonPart> parts =
                copy.steps().stream().flatMap(one -> one.parts().stream()).toList();
        assertTrue(LessonPart.only(LessonPart.Teacher.class, parts).isEmpty());
        assertTrue(LessonPart.only(LessonPart.Asked.class, parts).isEmpty());
        assertTrue(LessonPart.only(LessonPart.Check.class, parts).isEmpty());
        assertFalse(text.contains("- * "), text);
        assertFalse(text.contains("<!-- ="), text);
    }
}
