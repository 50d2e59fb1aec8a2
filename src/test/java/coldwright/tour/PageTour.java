package coldwright.tour;

import coldwright.desk.DeskApp;
import coldwright.desk.messages.Messages;

import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.stage.Window;

import org.fxmisc.richtext.CodeArea;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A process of its own that opens the window and takes a picture of each page, in the language,
 * type size and colours of the data folder's settings.
 */
public final class PageTour {
    private static final double PATIENCE_S = 60;

    private PageTour() {}

    /**
     * Takes the tour.
     *
     * @param words the folder for the pictures
     * @throws Exception if the window does not answer
     */
    public static void main(String[] words) throws Exception {
        Thread app = new Thread(() -> Application.launch(DeskApp.class), "app");
        app.setDaemon(true);
        app.start();
        while (Window.getWindows().isEmpty()) {
            Thread.sleep(50);
        }
        Hands.await(() -> found(look("home-lesson")).isPresent(), PATIENCE_S);
        Stage stage = Hands.ask(() -> (Stage) Window.getWindows().get(0));
        Pictures pictures = new Pictures(Path.of(words[0]));
        picture(pictures, stage, "1-home");
        press("home.course-book");
        picture(pictures, stage, "1-course");
        press("trials.home");
        picture(pictures, stage, "2-trials");
        press("glossary");
        picture(pictures, stage, "3-glossary");
        press("settings");
        picture(pictures, stage, "4-settings");
        press("batch.page");
        Hands.settle(3_000);
        picture(pictures, stage, "5-batch");
        press("batch.new");
        picture(pictures, stage, "5-batch-new");
        press("batch.example.CARAMEL");
        Hands.settle(3_000);
        picture(pictures, stage, "5-batch-example");
        press("batch.paste");
        picture(pictures, stage, "5-batch-paste");
        pressWord("Coldwright");
        Hands.act(() -> ((Button) found(look("home-lesson")).orElseThrow()).fire());
        Hands.settle(1_500);
        picture(pictures, stage, "6-lesson");
        press("lesson.run-all");
        Hands.settle(8_000);
        Hands.act(() -> found(look("term")).ifPresent(PageTour::ask));
        picture(pictures, stage, "7-term");
        Hands.act(() -> Hands.key(stage.getScene().getRoot(), KeyCode.ESCAPE));
        Hands.act(() -> found(CodeArea.class::isInstance).ifPresent(PageTour::help));
        picture(pictures, stage, "7-help");
        Hands.act(() -> Hands.key(stage.getScene().getFocusOwner(), KeyCode.ESCAPE));
        press("handout");
        picture(pictures, stage, "7-print");
        press("classroom.open");
        Hands.settle(1_500);
        press("classroom.next");
        picture(pictures, stage, "8-classroom");
        press("classroom.notes");
        Hands.settle(1_500);
        pictures.write(
                "8-notes",
                Hands.ask(() -> Window.getWindows().get(Window.getWindows().size() - 1))
                        .getScene());
        Platform.exit();
        System.exit(0);
    }

    private static void ask(Node link) {
        link.requestFocus();
        Hands.key(link, KeyCode.ENTER);
    }

    /** Asks for help on the first name of the snippet that is a calculator's. */
    private static void help(Node editor) {
        CodeArea code = (CodeArea) editor;
        editor.requestFocus();
        code.moveTo(Math.max(0, code.getText().indexOf("grams")) + 1);
        Hands.key(editor, KeyCode.F1);
    }

    private static void picture(Pictures pictures, Stage stage, String name) throws Exception {
        Hands.settle(1_000);
        pictures.write(name, stage.getScene());
    }

    private static Predicate<Node> look(String name) {
        return node -> node.getStyleClass().contains(name) && Hands.isSeen(node);
    }

    private static Optional<Node> found(Predicate<Node> wanted) {
        return Hands.inWindow(wanted).findFirst();
    }

    /** Presses a button of the page or, if it isn't there, of the contents. */
    private static void press(String key) throws Exception {
        pressWord(Messages.of(key));
    }

    private static void pressWord(String word) throws Exception {
        if (!Hands.ask(() -> fire(word))) {
            Hands.act(() -> fire(Messages.of("contents")));
            Hands.settle(500);
            Hands.act(() -> fire(word));
        }
        Hands.settle(500);
    }

    private static boolean fire(String word) {
        Optional<Node> button =
                found(
                        node ->
                                node instanceof ButtonBase one
                                        && ((Labeled) one).getText().equals(word)
                                        && Hands.isSeen(node));
        button.ifPresent(one -> ((ButtonBase) one).fire());
        return button.isPresent();
    }
}
