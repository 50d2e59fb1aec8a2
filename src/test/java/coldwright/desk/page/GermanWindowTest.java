package coldwright.desk.page;

import static coldwright.desk.page.OnPage.has;
import static coldwright.desk.page.OnPage.slip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.EnglishWords;
import coldwright.batch.RecipeExample;
import coldwright.desk.BenchRunner;
import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.code.CodeEditor;
import coldwright.desk.layout.CollapsibleSection;
import coldwright.desk.model.DeskModel;
import coldwright.desk.prose.ProseView;
import coldwright.words.Words;
import coldwright.workbook.settings.Preferences;

import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import javafx.stage.Window;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Executors;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The window in its second language; no snippet is run here. */
@ExtendWith(ApplicationExtension.class)
class GermanWindowTest {
    /** Looks of nodes with a text of a lesson. */
    private static final Set<String> OF_LESSONS = Set.of("step-title", "listing");

    /** Titles of the lesson, its steps and its track, which are also in texts of the window. */
    private static final Pattern TITLES =
            Pattern.compile(
                    "A lesson to press on|Draw a line|Run on|Read only|Kitchen trials without a machine");

    private final ThreadPoolExecutor work = (ThreadPoolExecutor) Executors.newCachedThreadPool();
    private BenchRunner bench;
    private DeskModel desk;

    @Start
    void start(Stage stage) {
        Words.show(Locale.GERMAN);
        bench = new BenchRunner(work, Preferences::usual);
        desk = TestDesk.lay(stage, bench, work);
    }

    @AfterEach
    void backToEnglish() {
        Words.show(Locale.ENGLISH);
        bench.close();
        work.setRejectedExecutionHandler(new ThreadPoolExecutor.DiscardPolicy());
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
        noPageHasEnglish(robot);
    }

    /** Walks all pages, with every section open; lessons and what they contain are English. */
    private void noPageHasEnglish(FxRobot robot) throws Exception {
        Map<String, Runnable> pages = new LinkedHashMap<>();
        pages.put("lesson", () -> {});
        pages.put("classroom", desk::toggleClassroom);
        pages.put("home", desk::goHome);
        pages.put("glossary", () -> desk.openGlossary(""));
        pages.put("settings", desk::openSettings);
        pages.put("trials", desk::openTrials);
        pages.put("batch", desk::openBatches);
        for (RecipeExample example : RecipeExample.values()) {
            pages.put(
                    example.name(),
                    () ->
                            desk.batches()
                                    .open()
                                    .get()
                                    .change("", example.recipe().called("Eis").times(3)));
        }
        Map<String, List<String>> left = new LinkedHashMap<>();
        int seen = 0;
        for (Map.Entry<String, Runnable> page : pages.entrySet()) {
            robot.interact(page.getValue());
            BatchModel batch = desk.batches().open().get();
            OnPage.waitFor(
                    () -> batch == null || batch.figuresAreOfNow() ? page : null, "the figures");
            robot.interact(
                    () ->
                            robot.lookup(".collapsible")
                                    .queryAllAs(CollapsibleSection.class)
                                    .forEach(one -> one.setOpen(true)));
            WaitForAsyncUtils.waitForFxEvents();
            Set<String> texts = new LinkedHashSet<>();
            for (Window window : List.copyOf(Window.getWindows())) {
                texts(window.getScene().getRoot(), texts);
            }
            seen += texts.size();
            List<String> english = EnglishWords.in(texts);
            if (!english.isEmpty()) {
                left.put(page.getKey(), english);
            }
        }
        assertTrue(seen > 400, "too few texts were seen: " + seen);
        assertEquals(Map.of(), left);
    }

    /** What a node and all in it show and speak, but for prose and code of lessons. */
    private static void texts(Node node, Set<String> texts) {
        boolean ofLesson =
                node instanceof ProseView
                        || node instanceof CodeEditor
                        || node.getStyleClass().stream().anyMatch(OF_LESSONS::contains);
        if (ofLesson) {
            return;
        }
        Stream<String> own =
                Stream.of(
                        node.getAccessibleText(),
                        node.getAccessibleHelp(),
                        node instanceof Labeled one ? one.getText() : null,
                        node instanceof Text one ? one.getText() : null,
                        node instanceof TextInputControl one ? one.getPromptText() : null,
                        node instanceof Control one && one.getTooltip() != null
                                ? one.getTooltip().getText()
                                : null);
        own.filter(text -> text != null && !TestDesk.LESSON.contains(text.strip()))
                .map(text -> TITLES.matcher(text).replaceAll(""))
                .forEach(texts::add);
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> texts(child, texts));
        }
    }
}
