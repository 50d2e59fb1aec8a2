package coldwright.desk;

import coldwright.desk.model.ByHandRunner;
import coldwright.desk.model.DeskModel;
import coldwright.desk.page.TestDesk;
import coldwright.workbook.DataFolder;
import coldwright.workbook.Workbook;

import javafx.beans.property.StringProperty;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Windows without a screen on one data folder, each with the same two lessons of two snippets. */
final class TwoWindows {
    static final int LESSONS = 2;
    static final int SNIPPETS = 2;

    private static final String LESSON =
            """
            # Lesson %d

            ## One

            ```java
            int a = 1;
            ```

            ## Two

            ```java
            int b = 2;
            ```
            """;

    private final Path folder;

    TwoWindows(Path folder) {
        this.folder = folder;
    }

    Path data() {
        return folder.resolve("data");
    }

    Window open() throws IOException {
        return new Window();
    }

    /** All files that can be read back: their names in the data folder, and their texts. */
    Map<String, String> files() throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> files = Files.walk(data())) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                all.put(
                        data().relativize(file).toString().replace('\\', '/'),
                        Files.readString(file));
            }
        }
        return all;
    }

    /** A window from its opening to its end. */
    final class Window {
        private final ByHandClock clock = new ByHandClock();
        private final Workbook workbook = Workbook.open(new DataFolder(data()));
        private final WorkKeeper workKeeper;
        private final DeskModel desk;

        private Window() throws IOException {
            workKeeper = new WorkKeeper(workbook, clock, Runnable::run, words -> tell(words));
            desk = TestDesk.model(new ByHandRunner(), workKeeper);
            for (int i = 0; i < LESSONS; i++) {
                Path file = folder.resolve("lesson-" + i + ".md");
                Files.writeString(file, LESSON.formatted(i));
                desk.openFile(file);
            }
        }

        private void tell(String words) {
            if (desk != null) {
                desk.notify(words);
            }
        }

        DeskModel desk() {
            return desk;
        }

        WorkKeeper keeper() {
            return workKeeper;
        }

        Workbook workbook() {
            return workbook;
        }

        private StringProperty snippet(int lesson, int index) {
            return desk.lessons().get(lesson).snippets().get(index).text();
        }

        String text(int lesson, int index) {
            return snippet(lesson, index).get();
        }

        void type(int lesson, int index, String text) {
            snippet(lesson, index).set(text);
        }

        /** What waits to be written is written, if it can be. */
        void pass() {
            clock.pass();
        }

        /** The learner goes to it. */
        void focus() {
            workKeeper.tryAgain();
        }

        void close() {
            workKeeper.close();
        }

        /** It ends without a chance to write anything; the system lets its lock go. */
        void crash() {
            workbook.close();
        }
    }
}
