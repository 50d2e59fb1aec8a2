package coldwright.desk;

import static org.junit.jupiter.api.Assertions.fail;

import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;

import java.util.List;

/**
 * A random user of the window. {@code -Drobot.acts=3000} lets it act for longer, and {@code
 * -Drobot.seed=7} draws other acts. A failure prints its seed and the fewest acts that repeat it.
 */
class RobotTest {
    /** Each seed does so many, then a new window opens. */
    private static final int ACTS_OF_A_SEED = 300;

    private static final int ACTS = Integer.getInteger("robot.acts", 300);
    private static final long SEED = Long.getLong("robot.seed", 20_261_201);

    @Test
    void findsNothingWrong() throws Exception {
        FxToolkit.registerPrimaryStage();
        for (int done = 0; done < ACTS; done += ACTS_OF_A_SEED) {
            long seed = SEED + done / ACTS_OF_A_SEED;
            List<RobotAct> acts = RobotUser.acts(seed, Math.min(ACTS_OF_A_SEED, ACTS - done));
            RobotUser.Failure failure = RobotUser.run(acts);
            if (failure != null) {
                String where = "seed " + seed + ", act " + failure.after() + ": ";
                System.err.println(where + failure.what() + "\nlooking for fewer acts");
                fail(where + RobotUser.shortened(acts.subList(0, failure.after()), failure.what()));
            }
        }
    }
}
