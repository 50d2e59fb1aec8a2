package coldwright.desk.batch;

import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.batch.model.BatchesModel;
import coldwright.desk.figure.FigurePainter;
import coldwright.desk.figure.FigureSettings;
import coldwright.desk.figure.FileChooserPrompt;
import coldwright.desk.figure.RenderContext;
import coldwright.desk.messages.Messages;

import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.stage.Stage;

import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/** Presses and looks on the batch page. */
abstract class BatchHands {
    private static final int PATIENCE_S = 60;

    /** Kept to the end, because figures of a closed page may still ask for it. */
    private static final ExecutorService WORK =
            Executors.newCachedThreadPool(
                    task -> {
                        Thread thread = new Thread(task, "batch page");
                        thread.setDaemon(true);
                        return thread;
                    });

    BatchesModel brew;
    String opened = "";

    /** Shows the page with the starter batch. */
    void open(Stage stage) {
        brew = new BatchesModel(WORK, Platform::runLater);
        brew.startBatch("Blood-orange sorbet");
        RenderContext renderContext =
                new RenderContext(FigurePainter.STILL, WORK, Platform::runLater);
        BatchView view =
                new BatchView(
                        brew,
                        new FigureSettings(renderContext, FileChooserPrompt.BY_DIALOG),
                        file -> {},
                        name -> Optional.of(new CourseLink(name, () -> opened = name)));
        view.getStyleClass().add("desk");
        for (String sheet : List.of("page.css", "figure.css")) {
            view.getStylesheets()
                    .add(0, getClass().getResource("/coldwright/desk/" + sheet).toExternalForm());
        }
        stage.setScene(new Scene(view, 1200, 780));
        stage.show();
    }

    /** Takes out most of the sugar, so that there is something to say. */
    BatchModel lackingSugar(FxRobot robot) throws Exception {
        robot.interact(() -> amount(robot, 1).setText("60 g"));
        settle();
        return brew.open().get();
    }

    void settle() throws Exception {
        await(() -> brew.open().get().figuresAreOfNow(), "the figures");
    }

    static void await(BooleanSupplier what, String words) throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
        while (System.nanoTime() < end) {
            if (WaitForAsyncUtils.asyncFx(what::getAsBoolean).get(PATIENCE_S, TimeUnit.SECONDS)) {
                return;
            }
            Thread.sleep(10);
        }
        throw new AssertionError("waited for " + words);
    }

    static TextField amount(FxRobot robot, int line) {
        return List.copyOf(robot.lookup(".brew-amount").queryAllAs(TextField.class)).get(line);
    }

    static Node focused(FxRobot robot) {
        return robot.window(0).getScene().getFocusOwner();
    }

    static void press(FxRobot robot, String word) {
        ButtonBase button =
                robot.lookup(
                                node ->
                                        node instanceof ButtonBase one
                                                && word.equals(one.getText())
                                                && !one.isDisabled())
                        .queryAs(ButtonBase.class);
        robot.interact(
                () -> {
                    button.requestFocus();
                    button.fire();
                });
    }

    static Set<Node> visible(FxRobot robot, String text) {
        return robot.lookup(
                        node ->
                                node instanceof Labeled one
                                        && text.equals(one.getText())
                                        && one.getParent().isVisible())
                .queryAll();
    }

    /** Enabled buttons that make the next batch from a change. */
    static List<Button> nexts(FxRobot robot) {
        return robot.lookup(".brew-offer .word").queryAllAs(Button.class).stream()
                .filter(one -> !one.isDisabled())
                .filter(one -> one.getText().equals(Messages.of("batch.take-next")))
                .toList();
    }

    static List<Button> takes(FxRobot robot) {
        return robot.lookup(".brew-offer .word").queryAllAs(Button.class).stream()
                .filter(one -> one.getText().equals(Messages.of("batch.take")))
                .toList();
    }

    static boolean dimmed(FxRobot robot) {
        return robot.lookup(".brew-figures").query().getPseudoClassStates().stream()
                .anyMatch(one -> one.getPseudoClassName().equals("stale"));
    }

    static List<String> labels(FxRobot robot) {
        return robot.lookup(".brew-figures .label").queryAllAs(Label.class).stream()
                .filter(one -> one.isVisible() && one.getParent().isVisible())
                .map(Label::getText)
                .toList();
    }
}
