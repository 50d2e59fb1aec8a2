package coldwright.desk.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.batch.Recipe;
import coldwright.batch.RecipeLine;
import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.batch.model.BatchSentences;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.Typography;
import coldwright.science.plan.Finding;

import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TextField;
import javafx.stage.Stage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

import java.util.List;

/** Takes, undoes and opens what the page of a batch advises. */
@ExtendWith(ApplicationExtension.class)
class BatchFindingsWindowTest extends BatchHands {
    @Start
    void start(Stage stage) {
        open(stage);
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
}
