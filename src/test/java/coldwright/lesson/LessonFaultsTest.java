package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every faulty lesson of a folder gives the sentences written down beside it, and what is left. */
class LessonFaultsTest {
    private static final Path FOLDER = Path.of("src/test/resources/lessons-with-faults");

    record Expected(String file, List<String> lines) {
        @Override
        public String toString() {
            return file;
        }
    }

    static Stream<Expected> expected() throws IOException {
        String text = Files.readString(FOLDER.resolve("expected.txt"), StandardCharsets.UTF_8);
        return Arrays.stream(text.split("\n\n"))
                .skip(1)
                .map(section -> section.strip().lines().toList())
                .map(lines -> new Expected(lines.get(0).replaceFirst(":.*", ""), lines));
    }

    @ParameterizedTest
    @MethodSource("expected")
    void tellsEachFaultAndKeepsTheRest(Expected expected) throws IOException {
        String text = Files.readString(FOLDER.resolve(expected.file()), StandardCharsets.UTF_8);
        Lesson lesson = LessonReader.read(expected.file(), text);
        int parts = lesson.steps().stream().mapToInt(step -> step.parts().size()).sum();
        String left =
                "%s: %d steps, %d parts".formatted(expected.file(), lesson.steps().size(), parts);
        String told =
                lesson.faults().stream()
                        .map(fault -> fault.line() + ": " + fault.words())
                        .collect(Collectors.joining("\n"));
        assertEquals(String.join("\n", expected.lines()), left + "\n" + told);
    }

    @ParameterizedTest
    @MethodSource("expected")
    void everySentenceNamesAMend(Expected expected) {
        for (String line : expected.lines().subList(1, expected.lines().size())) {
            assertTrue(line.matches("(?s)\\d+: .*[;:?].*"), line);
        }
    }

    @Test
    void everyFileOfTheFolderIsExpected() throws IOException {
        TreeSet<String> files = new TreeSet<>();
        try (Stream<Path> all = Files.list(FOLDER)) {
            all.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".md"))
                    .forEach(files::add);
        }
        TreeSet<String> told =
                expected().map(Expected::file).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(files, told);
        assertTrue(files.size() >= 30, "only " + files.size() + " kinds of fault");
    }
}
