package coldwright.desk.page;

import static coldwright.desk.page.OnPage.has;
import static coldwright.desk.page.OnPage.slip;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.BenchRunner;
import coldwright.words.Words;
import coldwright.workbook.settings.Preferences;

import javafx.stage.Stage;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** The window in its second language; no snippet is run here. */
@ExtendWith(ApplicationExtension.class)
class GermanWindowTest {
    private final ExecutorService work = Executors.newCachedThreadPool();
    private BenchRunner bench;

    @Start
    void start(Stage stage) {
        Words.show(Locale.GERMAN);
        bench = new BenchRunner(work, Preferences::usual);
        TestDesk.lay(stage, bench, work);
    }

    @AfterEach
    void backToEnglish() {
        Words.show(Locale.ENGLISH);
        bench.close();
        work.shutdownNow();
    }

    @Test
    void theWindowSpeaksGermanAndTheLessonItsOwnLanguage(FxRobot robot) throws Exception {
        slip(robot, 0);
        assertTrue(has(robot, "Ausführen"));
        assertTrue(has(robot, "Was ist die Vorhersage?"));
        assertTrue(has(robot, "Schritt 1"));
        assertTrue(has(robot, "How high is it at its end?"));
        for (String english : new String[] {"Run", "Stop", "Reset", "Contents", "Step 1"}) {
            assertFalse(has(robot, english), english);
        }
    }
}
