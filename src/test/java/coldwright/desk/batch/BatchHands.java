package coldwright.desk.batch;

import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TextField;

import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/** Presses and looks on the batch page. */
abstract class BatchHands {
    private static final int PATIENCE_S = 60;

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
}
