package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

class LessonFolderTest {
    @TempDir Path folder;
    private LessonFolder shelf;

    @BeforeEach
    void fill() throws IOException {
        for (String name : List.of("10-late.md", "02-salted-caramel.md", "01-oats-and-malt.md")) {
            Files.writeString(folder.resolve(name), "# " + name + "\n\n## s\n\nWords.\n");
        }
        Files.writeString(folder.resolve("notes.txt"), "no lesson");
        shelf = LessonFolder.in(folder);
    }

    @Test
    void keepsTheOrderOfTheFileNames() {
        assertEquals(List.of("01-oats-and-malt", "02-salted-caramel", "10-late"), shelf.names());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1",
                "01",
                "oats",
                "oats and malt",
                "01-oats-and-malt",
                "01-oats-and-malt.md",
                "OATS",
                "oats-and-malt"
            })
    void findsALessonByWhatPeopleCallIt(String words) {
        assertEquals("01-oats-and-malt.md", shelf.find(words).title());
    }

    @Test
    void findsALessonByItsPath() {
        assertEquals(
                "10-late.md",
                LessonFolder.in(Path.of("nowhere")).find(folder + "/10-late.md").title());
    }

    private String refusal(String words) {
        return assertThrows(IllegalArgumentException.class, () -> shelf.find(words))
                .getMessage()
                .replace(folder.toString(), "F");
    }

    @Test
    void namesTheNearest() {
        assertEquals(
                "there is no lesson \"salted-carmel\": did you mean \"02-salted-caramel\"?",
                refusal("salted-carmel"));
        assertEquals(
                "there is no lesson \"carmel\": did you mean \"02-salted-caramel\"?",
                refusal("carmel"));
        assertEquals(
                "there is no lesson \"7\"; there are 01-oats-and-malt, 02-salted-caramel, 10-late",
                refusal("7"));
        assertEquals(
                "there is no lesson \"a\"; there are 01-oats-and-malt, 02-salted-caramel, 10-late",
                refusal("a"));
        assertEquals(
                "there is no lesson \"\"; there are 01-oats-and-malt, 02-salted-caramel, 10-late",
                refusal(""));
        assertEquals(
                "F/10-lat.md: there is no such file: did you mean \"10-late.md\"?",
                refusal(folder + "/10-lat.md"));
        assertEquals(
                "there is no lesson \"a\0b.md\"; there are 01-oats-and-malt, 02-salted-caramel, 10-late",
                refusal("a\0b.md"));
    }

    @Test
    void anEmptyShelfSaysSo() {
        assertEquals(
                "there is no lesson \"oats\" because this program came without lessons; give the path of a lesson file",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> LessonFolder.in(folder.resolve("none")).find("oats"))
                        .getMessage());
    }

    @Test
    void theProgramsOwnLessonsHaveNoFaults() {
        LessonFolder own = LessonFolder.ofThisProgram();
        assertFalse(own.names().isEmpty());
        for (String name : own.names()) {
            assertEquals(List.of(), own.read(name).faults(), name);
        }
    }
}
