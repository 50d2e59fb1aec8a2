package coldwright.desk.page;

import coldwright.desk.code.CodeEditor;
import coldwright.desk.figure.model.ShownFigure;
import coldwright.desk.lesson.LessonView;
import coldwright.desk.lesson.model.SnippetModel;
import coldwright.desk.model.DeskModel;
import coldwright.figure.Series;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;

import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;

/** What a test looks for on the page, and how it waits for it. */
public final class OnPage {
    /** Long enough for a bench that starts on a busy machine; no test waits for its end. */
    static final int PATIENCE_S = 60;

    private OnPage() {}

    static SnippetModel snippet(DeskModel desk, int index) throws Exception {
        return waitFor(
                () -> {
                    if (desk.open().get() == null) {
                        return null;
                    }
                    return desk.open().get().steps().stream()
                            .flatMap(step -> step.snippets().stream())
                            .skip(index)
                            .findFirst()
                            .orElse(null);
                },
                "the lesson");
    }

    static CodeEditor slip(FxRobot robot, int index) throws Exception {
        return waitFor(
                () ->
                        robot.lookup(".code-editor").queryAllAs(CodeEditor.class).stream()
                                .skip(index)
                                .findFirst()
                                .orElse(null),
                "the snippet's text");
    }

    static void typeInto(FxRobot robot, int index, int at, String text) throws Exception {
        CodeEditor slip = slip(robot, index);
        robot.interact(
                () -> {
                    reveal(slip);
                    slip.requestFocus();
                    slip.moveTo(at);
                });
        if (!text.isEmpty()) {
            robot.write(text);
        }
    }

    static void press(FxRobot robot, String word, int index) throws Exception {
        slip(robot, index);
        Button button =
                waitFor(
                        () ->
                                robot
                                        .lookup(".snippet-buttons .word")
                                        .queryAllAs(Button.class)
                                        .stream()
                                        .filter(one -> one.getText().equals(word))
                                        .skip(index)
                                        .findFirst()
                                        .filter(one -> !one.isDisabled())
                                        .orElse(null),
                        "the word " + word);
        robot.interact(() -> reveal(button));
        robot.clickOn(button);
        WaitForAsyncUtils.waitForFxEvents();
    }

    static void reveal(Node node) {
        for (Node parent = node; parent != null; parent = parent.getParent()) {
            if (parent instanceof LessonView lesson) {
                lesson.applyCss();
                lesson.layout();
                lesson.reveal(node);
                lesson.layout();
            }
        }
    }

    static Node plate(FxRobot robot) {
        return robot.lookup(".figure-canvas").queryAll().stream()
                .filter(face -> face.isVisible() && face.getBoundsInLocal().getWidth() > 0)
                .findFirst()
                .orElse(null);
    }

    static Image figureOnPage(FxRobot robot) {
        Node face = plate(robot);
        return face == null ? null : ((ImageView) face.lookup(".image-view")).getImage();
    }

    static long inkOf(Image image) {
        long ink = 17;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                ink = ink * 31 + image.getPixelReader().getArgb(x, y);
            }
        }
        return ink;
    }

    static double endOfLine(ShownFigure shownFigure) {
        Series.Curve line = (Series.Curve) shownFigure.figure().orElseThrow().series().get(0);
        return line.y().at(line.size() - 1);
    }

    static boolean has(FxRobot robot, String words) {
        return robot
                .lookup(node -> node instanceof Labeled label && words.equals(label.getText()))
                .queryAll()
                .stream()
                .anyMatch(Node::isVisible);
    }

    static boolean statusStarts(FxRobot robot, String words) {
        return robot.lookup(".status").queryAllAs(Labeled.class).stream()
                .anyMatch(label -> label.getText().startsWith(words));
    }

    static String labelIn(FxRobot robot, Node parent, String look) {
        return robot.from(parent).lookup(look).queryAs(Labeled.class).getText();
    }

    static boolean isWithin(Node node, Class<?> kind) {
        for (Node parent = node; parent != null; parent = parent.getParent()) {
            if (kind.isInstance(parent)) {
                return true;
            }
        }
        return false;
    }

    /** Asks on the window's thread again and again until there is an answer. */
    public static <T> T waitFor(Callable<T> question, String what) throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
        while (System.nanoTime() < end) {
            T answer = WaitForAsyncUtils.asyncFx(question).get(PATIENCE_S, TimeUnit.SECONDS);
            if (answer != null) {
                return answer;
            }
            Thread.sleep(20);
        }
        throw new AssertionError("waited %d s for %s".formatted(PATIENCE_S, what));
    }
}
