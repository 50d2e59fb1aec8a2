package coldwright.desk.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.batch.Recipe;
import coldwright.batch.RecipeLine;
import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.batch.model.BatchSentences;
import coldwright.desk.batch.model.BatchesModel;
import coldwright.desk.figure.FigurePainter;
import coldwright.desk.figure.FigureSettings;
import coldwright.desk.figure.FileChooserPrompt;
import coldwright.desk.figure.RenderContext;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.Typography;
import coldwright.science.mix.Shelf;
import coldwright.science.plan.Finding;

import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Types and presses on the page of a cook's own batches. */
@ExtendWith(ApplicationExtension.class)
class BatchWindowTest extends BatchHands {
    private static final ExecutorService WORK = Executors.newCachedThreadPool();

    private BatchesModel brew;
    private String opened = "";

    @AfterAll
    static void stop() {
        WORK.shutdownNow();
    }

    @Start
    void start(Stage stage) {
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
    private BatchModel lackingSugar(FxRobot robot) throws Exception {
        robot.interact(() -> amount(robot, 1).setText("60 g"));
        settle();
        return brew.open().get();
    }

    private void settle() throws Exception {
        await(() -> brew.open().get().figuresAreOfNow(), "the figures");
    }

    @Test
    void keysChangeTheFiguresAndControlZTakesThemBack(FxRobot robot) throws Exception {
        settle();
        BatchModel batch = brew.open().get();
        double before = batch.preview().get().orElseThrow().curve().initialFreezingPointC();
        robot.interact(
                () -> {
                    amount(robot, 1).requestFocus();
                    amount(robot, 1).selectAll();
                });
        robot.write("220");
        settle();

        double now = batch.preview().get().orElseThrow().curve().initialFreezingPointC();
        assertTrue(now < before, "more sugar freezes lower");
        assertEquals(220, batch.figures().get().orElseThrow().mix().massG(Shelf.SUCROSE));

        robot.press(KeyCode.CONTROL, KeyCode.Z).release(KeyCode.Z, KeyCode.CONTROL);
        settle();

        assertEquals("150 g", amount(robot, 1).getText());
    }

    @Test
    void controlZInTheServingsTakesTheirNumberBackToo(FxRobot robot) throws Exception {
        settle();
        TextField servings =
                robot.lookup(".brew-short").queryAllAs(TextField.class).stream()
                        .filter(one -> one.getAccessibleText().contains("80 g"))
                        .findFirst()
                        .orElseThrow();
        String before = servings.getText();
        double grams = brew.open().get().recipe().get().massG();
        robot.interact(
                () -> {
                    servings.requestFocus();
                    servings.selectAll();
                });
        robot.write("30");
        assertEquals(2400, brew.open().get().recipe().get().massG(), 0.1);
        robot.press(KeyCode.CONTROL, KeyCode.Z).release(KeyCode.Z, KeyCode.CONTROL);
        WaitForAsyncUtils.waitForFxEvents();

        assertEquals(grams, brew.open().get().recipe().get().massG());
        assertEquals(before, servings.getText());
    }

    @Test
    void aLineIsAddedByTheKeyboardAlone(FxRobot robot) throws Exception {
        settle();
        robot.interact(
                () ->
                        List.copyOf(
                                        robot.lookup(".brew-line .brew-name")
                                                .queryAllAs(TextField.class))
                                .get(2)
                                .requestFocus());
        robot.push(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        robot.write("30");
        robot.push(KeyCode.ENTER);
        robot.write("dextrose");
        settle();

        await(
                () ->
                        brew.open().get().figures().get().orElseThrow().mix().amounts().stream()
                                .anyMatch(
                                        one ->
                                                one.massG() == 30
                                                        && one.ingredient()
                                                                .name()
                                                                .equals("dextrose")),
                "the dextrose, by the name that was typed");
    }

    @Test
    void aWishIsTakenAndATastingMakesTheNextBatch(FxRobot robot) throws Exception {
        settle();
        String was = brew.open().get().recipe().get().toString();
        press(robot, Messages.of("batch.wish.scoopable", "−18"));
        await(() -> !nexts(robot).isEmpty(), "a change for the goal");
        robot.interact(
                () ->
                        ((Button) nexts(robot).get(0).getParent().getChildrenUnmodifiable().get(0))
                                .fire());
        settle();
        assertNotEquals(was, brew.open().get().recipe().get().toString());
        press(robot, Messages.of("batch.symptom.icy"));
        await(() -> !nexts(robot).isEmpty(), "a mend");
        press(robot, Messages.of("batch.take-next"));

        assertEquals(2, brew.batches().size());
        assertEquals(List.of("icy"), brew.batches().get(0).lineage().get().found());
        assertEquals(1, brew.open().get().lineage().get().after());
    }

    @Test
    void aFindingIsTakenNamedAndUndone(FxRobot robot) throws Exception {
        BatchModel batch = lackingSugar(robot);
        String before = batch.recipe().get().toString();
        await(
                () -> !robot.lookup(".brew-findings .brew-offer .word").queryAll().isEmpty(),
                "a mend of a finding");
        Button take =
                robot.lookup(".brew-findings .brew-offer .word").queryAllAs(Button.class).stream()
                        .findFirst()
                        .orElseThrow();
        List<RecipeLine> lines = batch.recipe().get().lines();
        robot.interact(
                () -> {
                    take.requestFocus();
                    take.fire();
                });
        settle();
        await(
                () -> focused(robot) instanceof TextField || focused(robot) instanceof Button,
                "the focus");
        List<RecipeLine> now = batch.recipe().get().lines();
        int changed = 0;
        while (changed < now.size()
                && changed < lines.size()
                && now.get(changed).equals(lines.get(changed))) {
            changed++;
        }
        if (changed < now.size()) {
            assertEquals(amount(robot, changed), focused(robot), "on the amount that was taken");
        } else {
            assertEquals(Messages.of("batch.undo"), ((Button) focused(robot)).getText());
        }

        assertNotEquals(before, batch.recipe().get().toString());
        String taken = batch.lineage().get().taken().get(0);
        await(
                () ->
                        robot.lookup(Typography.of(Messages.of("batch.history.taken", taken)))
                                .tryQuery()
                                .isPresent(),
                "the history naming what was taken");

        robot.interact(() -> press(robot, Messages.of("batch.undo")));
        assertEquals(before, batch.recipe().get().toString());
        assertEquals(List.of(), batch.lineage().get().taken());
    }

    @Test
    void aFindingOpensToItsSumAndTheLessonThatTeachesIt(FxRobot robot) throws Exception {
        Finding first =
                lackingSugar(robot).figures().get().orElseThrow().report().findings().get(0);
        String sum = Typography.of(BatchSentences.finding(first).get(1));
        assertTrue(visible(robot, sum).isEmpty(), "folded at first");

        press(robot, Messages.of("batch.why"));
        assertFalse(visible(robot, sum).isEmpty(), sum);

        String lesson = first.fault().lesson();
        press(robot, Typography.of(Messages.of("batch.why.lesson", lesson)));
        assertEquals(lesson, opened);
    }

    @Test
    void batchesStandSideBySideAndTheClockBeginsWhenAsked(FxRobot robot) throws Exception {
        settle();
        assertTrue(robot.lookup(".brew-card").queryAll().isEmpty());
        BatchModel first = brew.open().get();
        robot.interact(() -> brew.next(first, first.recipe().get().weighing(400), "less"));
        settle();
        await(() -> robot.lookup(".brew-card").queryAll().size() == 2, "two cards");
        await(
                () ->
                        robot.lookup(".brew-card .brew-mend").queryAllAs(Label.class).stream()
                                .anyMatch(one -> one.getText().contains("600")),
                "the amounts that differ");

        press(robot, Messages.of("batch.clock.from"));
        assertTrue(
                robot.lookup(".brew-clock-words .label").queryAllAs(Label.class).stream()
                        .anyMatch(one -> one.getText().startsWith("Knead")));
    }

    @Test
    void whatIsTypedIntoIsCalledByAName(FxRobot robot) throws Exception {
        settle();
        for (Node node : robot.lookup(".text-field").queryAll()) {
            assertTrue(
                    node.getAccessibleText() != null && !node.getAccessibleText().isBlank(),
                    () -> "a field without a name: " + node);
        }
    }

    @Test
    void whileALineIsMisspeltItsResultsAreDimmedAndNothingCanBeTaken(FxRobot robot)
            throws Exception {
        BatchModel batch = lackingSugar(robot);
        press(robot, Messages.of("batch.wish.scoopable", "−18"));
        await(
                () ->
                        takes(robot).size() > 1
                                && takes(robot).stream().noneMatch(Button::isDisabled),
                "changes for a finding and for a goal");
        Recipe fine = batch.recipe().get();

        robot.interact(
                () ->
                        List.copyOf(
                                        robot.lookup(".brew-line .brew-name")
                                                .queryAllAs(TextField.class))
                                .get(1)
                                .setText("sucroxx"));
        Recipe misspelt = batch.recipe().get();
        assertNotEquals(fine, misspelt);
        assertFalse(batch.figuresAreOfNow());
        takes(robot).forEach(one -> assertTrue(one.isDisabled(), one::toString));
        robot.interact(() -> takes(robot).forEach(Button::fire));
        assertEquals(misspelt, batch.recipe().get());
        await(() -> dimmed(robot), "dimmed results");
        assertTrue(
                robot.lookup(
                                node ->
                                        node instanceof ButtonBase one
                                                && Messages.of("batch.wish.scoopable", "−18")
                                                        .equals(one.getText()))
                        .query()
                        .isDisabled());

        robot.interact(batch::undo);
        settle();
        await(() -> !dimmed(robot), "results of the recipe shown");
        await(
                () -> takes(robot).stream().noneMatch(Button::isDisabled),
                "changes that can be taken again");
    }

    @Test
    void glucoseOffersDextroseOrTheSyrup(FxRobot robot) throws Exception {
        settle();
        robot.interact(
                () ->
                        List.copyOf(
                                        robot.lookup(".brew-line .brew-name")
                                                .queryAllAs(TextField.class))
                                .get(1)
                                .setText("glucose"));
        List<String> offered =
                robot.lookup(".brew-line .brew-choices .word").queryAllAs(Button.class).stream()
                        .filter(Node::isVisible)
                        .map(Button::getText)
                        .toList();
        assertEquals(List.of("dextrose", "glucose syrup"), offered);

        press(robot, "glucose syrup");
        settle();
        assertEquals(
                150,
                brew.open().get().figures().get().orElseThrow().mix().massG(Shelf.GLUCOSE_SYRUP));
    }

    @Test
    void aPastedRecipeBecomesRowsAndUnclearAmountsAreChosen(FxRobot robot) throws Exception {
        settle();
        press(robot, "Paste a recipe");
        TextArea area =
                robot.lookup(".brew-own .text-area").queryAllAs(TextArea.class).iterator().next();
        robot.interact(() -> area.setText("2 egg yolks\n8 oz cream\nMethod\nWhisk and freeze."));
        press(robot, Typography.of("226.8 g cream 35 %"));
        press(robot, "Add to the recipe");
        settle();

        var mix = brew.open().get().figures().get().orElseThrow().mix();
        assertEquals(36, mix.massG(Shelf.EGG_YOLK), 1e-9);
        assertEquals(226.8, mix.massG(Shelf.CREAM_35), 0.1);
        assertEquals("Whisk and freeze.", brew.open().get().recipe().get().notes());

        robot.interact(() -> amount(robot, 3).setText("4"));
        press(robot, Typography.of("72 g egg yolk"));
        settle();
        assertEquals(
                72, brew.open().get().figures().get().orElseThrow().mix().massG(Shelf.EGG_YOLK));
    }

    @Test
    void theSourcesAreOneClickAway(FxRobot robot) throws Exception {
        settle();
        List<String> shown = labels(robot);
        assertTrue(
                shown.stream().anyMatch(one -> one.contains("(rule of thumb)")), shown::toString);
        assertTrue(shown.stream().noneMatch(one -> one.contains("textbooks")), shown::toString);

        press(robot, Messages.of("batch.sources"));
        assertTrue(
                labels(robot).stream()
                        .anyMatch(one -> one.startsWith("Rule of thumb, from memory: ")),
                () -> labels(robot).toString());
    }
}
