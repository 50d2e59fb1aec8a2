package coldwright.terminal;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.lesson.LessonFolder;
import coldwright.workbook.DataFolder;
import coldwright.workbook.Workbook;
import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.LessonKey;
import coldwright.workbook.work.LessonWork;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Which steps a walk marks as done, the same as the window does; the bench here is real. */
class WalkDoneTest {
    private static final String TEXT =
            """
            # Cold oats

            ## Weigh

            ```java
            double oatG = 40;
            ```

            ```check
            oatG is 40 within 1
            ```

            ## Your turn

            ```java
            double sugarG = 0;
            ```

            ```java solution
            double sugarG = 60;
            ```

            ```check
            sugarG > 50 is true -- the task
            ```
            """;

    private static final LessonKey KEY = LessonKey.ofCourse("01-oats");

    @TempDir private Path folder;

    private LessonWork walked(LessonWork before) throws IOException {
        Files.writeString(Files.createDirectories(folder.resolve("l")).resolve("01-oats.md"), TEXT);
        DataFolder data = new DataFolder(folder.resolve("data"));
        try (Workbook workbook = Workbook.open(data)) {
            workbook.save(before);
        }
        TypedSession typedSession = TypedSession.somebody("b", "", "", "");
        LessonFolder shelf = LessonFolder.in(folder.resolve("l"));
        new Terminal(typedSession.screen(), shelf, data, SharedBenches.SHARED)
                .execute("walk", "1", "-o", folder.resolve("figures").toString());
        try (Workbook workbook = Workbook.open(data)) {
            return workbook.load(KEY).value().orElseThrow();
        }
    }

    private static LessonWork none() {
        return LessonWork.empty(KEY, "01-oats.md", "Cold oats", ContentHash.of(TEXT));
    }

    @Test
    void aStepWhoseCheckDoesNotHoldIsNotDone() throws IOException {
        LessonWork work = walked(none());
        assertTrue(work.step("Weigh").done());
        assertTrue(work.step("Your turn").read());
        assertFalse(work.step("Your turn").done());
    }

    @Test
    void theLearnersOwnTextDoesIt() throws IOException {
        LessonWork solved =
                none().withSnippet(
                                "Your turn",
                                new coldwright.workbook.work.SnippetEdit(
                                        0,
                                        "double sugarG = 55;",
                                        ContentHash.of("double sugarG = 0;")));
        assertTrue(walked(solved).step("Your turn").done());
    }

    @Test
    void whatWasKeptAsDoneWithoutASolutionIsTakenBack() throws IOException {
        assertFalse(walked(none().withDone("Your turn", true)).step("Your turn").done());
    }
}
