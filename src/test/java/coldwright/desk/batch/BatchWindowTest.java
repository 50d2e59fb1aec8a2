package coldwright.desk.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.batch.Recipe;
import coldwright.batch.RecipeExample;
import coldwright.batch.RecipeLine;
import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.Typography;
import coldwright.science.mix.Shelf;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

import java.util.List;

/** Types and presses on the page of a cook's own batches. */
@ExtendWith(ApplicationExtension.class)
class BatchWindowTest extends BatchHands {
    @Start
    void start(Stage stage) {
        open(stage);
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
    void aNewBatchIsEmptyWithExamplesBesideIt(FxRobot robot) throws Exception {
        settle();
        press(robot, Messages.of("batch.new"));
        BatchModel empty = brew.open().get();
        assertEquals("", empty.recipe().get().lines().get(0).name());
        WaitForAsyncUtils.waitForFxEvents();
        assertFalse(robot.lookup(".brew-figures").query().isVisible(), "no results of another");
        assertEquals("", empty.trouble().get());

        press(robot, Messages.of("batch.example.OAT"));
        settle();
        assertEquals(RecipeExample.OAT.recipe(), empty.recipe().get());
        assertTrue(robot.lookup(".brew-figures").query().isVisible());

        press(robot, Messages.of("batch.undo"));
        assertEquals("", empty.recipe().get().lines().get(0).name());
    }

    @Test
    void theVerdictIsInViewWhileALineIsTyped(FxRobot robot) throws Exception {
        settle();
        ScrollPane page =
                (ScrollPane)
                        robot.lookup(node -> node instanceof ScrollPane)
                                .queryAll()
                                .iterator()
                                .next();
        robot.interact(() -> page.setVvalue(1));
        Labeled verdict = robot.lookup(".brew-verdict-words").queryLabeled();
        Bounds at = verdict.localToScene(verdict.getBoundsInLocal());
        assertTrue(at.getMaxY() <= 780 && at.getMinY() > 600, at::toString);
        String before = verdict.getText();
        assertTrue(before.contains("ice at"), before);

        robot.interact(() -> amount(robot, 1).setText("300 g"));
        await(() -> !verdict.getText().equals(before), "another verdict");
    }

    @Test
    void theTilesCompareTwoBatches(FxRobot robot) throws Exception {
        settle();
        BatchModel first = brew.open().get();
        Recipe sweeter = first.recipe().get().with(1, new RecipeLine("250 g", "sucrose"));
        robot.interact(() -> brew.next(first, sweeter, "sweeter"));
        settle();
        await(
                () ->
                        robot.lookup(".brew-tile-words").queryAllAs(Labeled.class).stream()
                                        .filter(one -> one.getText().contains("Batch 1:"))
                                        .count()
                                == 3,
                "the other batch under three pictures");
        assertTrue(robot.lookup(".small-other").queryAll().size() >= 6, "and in all four");
        String parts = robot.lookup(".brew-tile").queryAll().iterator().next().getAccessibleText();
        assertTrue(parts.contains("Batch 1: "), parts);
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
