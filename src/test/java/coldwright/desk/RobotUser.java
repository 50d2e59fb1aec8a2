package coldwright.desk;

import javafx.scene.Node;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A random user of the window, the same for the same seed. */
final class RobotUser {
    /** The files are compared after so many acts. */
    private static final int SAVED_EACH = 40;

    /** One act in so many is a restart. */
    private static final int RESTART_EACH = 150;

    private static final int MOST_TRIES = 60;
    private static final int LOOKS = 8;
    private static final int LOOK_AGAIN_MS = 60;

    private RobotUser() {}

    /** Acts for a seed. */
    static List<RobotAct> acts(long seed, int count) {
        Random random = new Random(seed);
        RobotAct.Kind[] kinds = RobotAct.Kind.values();
        return IntStream.range(0, count)
                .mapToObj(
                        i -> {
                            RobotAct.Kind kind = kinds[random.nextInt(kinds.length - 1)];
                            int number = random.nextInt(Integer.MAX_VALUE);
                            return i % RESTART_EACH == RESTART_EACH - 1
                                    ? new RobotAct(RobotAct.Kind.RESTART, number)
                                    : new RobotAct(kind, number);
                        })
                .toList();
    }

    /** A failure: after how many acts, and what was wrong. */
    record Failure(int after, String what) {}

    /** Does all acts in a new window until something is wrong; null if nothing is. */
    static Failure run(List<RobotAct> acts) throws Exception {
        Path folder = Files.createTempDirectory("robot");
        try (RobotWindow robot = new RobotWindow(folder)) {
            boolean scrolled = false;
            Node focus = null;
            for (int i = 0; i < acts.size(); i++) {
                RobotAct act = acts.get(i);
                if (act.kind() == RobotAct.Kind.RESTART) {
                    robot.restart();
                } else {
                    RobotWindow.ask(
                            () -> {
                                act.act(robot);
                                return true;
                            });
                    robot.settle();
                }
                Node now = RobotWindow.ask(() -> robot.stage().getScene().getFocusOwner());
                scrolled =
                        act.kind() == RobotAct.Kind.SCROLL
                                || act.kind() == RobotAct.Kind.RESIZE
                                || scrolled && now == focus;
                focus = now;
                List<String> wrong = wrongAtRest(robot, scrolled);
                if (i % SAVED_EACH == SAVED_EACH - 1) {
                    wrong.addAll(RobotChecks.unsaved(robot));
                }
                if (!wrong.isEmpty()) {
                    return new Failure(i + 1, wrong.get(0));
                }
            }
            return null;
        } finally {
            try (Stream<Path> all = Files.walk(folder)) {
                all.sorted(Comparator.reverseOrder()).forEach(one -> one.toFile().delete());
            }
        }
    }

    /** A layout or a result may take another moment on a busy machine. */
    static List<String> wrongAtRest(RobotWindow robot, boolean scrolled) throws Exception {
        List<String> wrong = List.of();
        for (int look = 0; look < LOOKS; look++) {
            wrong = RobotWindow.ask(() -> RobotChecks.wrong(robot, scrolled));
            if (wrong.isEmpty()) {
                break;
            }
            Thread.sleep(LOOK_AGAIN_MS);
            robot.settle();
        }
        return new ArrayList<>(wrong);
    }

    /** Fewer acts with which the same thing is wrong, and what it is. */
    static String shortened(List<RobotAct> failing, String what) throws Exception {
        List<RobotAct> acts = new ArrayList<>(failing);
        int tries = 0;
        for (int size = Math.max(1, acts.size() / 2); size >= 1; size /= 2) {
            for (int from = acts.size() - size - 1; from >= 0 && tries < MOST_TRIES; from -= size) {
                List<RobotAct> fewer = new ArrayList<>(acts);
                fewer.subList(from, Math.min(from + size, fewer.size() - 1)).clear();
                tries++;
                Failure failure = run(fewer);
                if (failure != null && kind(failure.what()).equals(kind(what))) {
                    acts = new ArrayList<>(fewer.subList(0, failure.after()));
                    from = Math.min(from, acts.size() - 1);
                }
            }
        }
        return what + "\nafter " + acts;
    }

    private static String kind(String what) {
        return what.substring(0, Math.min(24, what.length()));
    }
}
