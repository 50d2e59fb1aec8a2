package coldwright.desk.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.File;
import java.nio.file.Path;
import java.util.List;

class DroppedFilesTest {
    @Test
    void lessonsAndPacksAreTakenAndNothingElse(@TempDir Path folder) {
        List<File> dropped =
                List.of(
                        new File("a.md"),
                        new File("pack.zip"),
                        folder.toFile(),
                        new File("sorbet.batch"),
                        new File("picture.png"));
        assertEquals(
                List.of(Path.of("a.md"), Path.of("pack.zip"), folder),
                DroppedFiles.lessons(dropped));
    }
}
