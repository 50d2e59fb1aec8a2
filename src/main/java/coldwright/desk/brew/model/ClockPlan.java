package coldwright.desk.brew.model;

import coldwright.batch.BatchFile.Method;
import coldwright.batch.Reckoning;
import coldwright.desk.say.Say;
import coldwright.science.freezer.Cold;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezer.Stage;
import coldwright.text.Written;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The freeze plan on a kitchen clock that begins when the batch goes in.
 *
 * @param start when it goes in
 * @param roundMinutes how long once round the face is, minutes
 * @param doneMinutes when it is done with: soft-serve if it is moved, hard if it stands; not a
 *     number if never
 * @param least the same with good contact, minutes
 * @param most the same with poor contact, minutes
 * @param shakeAtMinutes when to shake it, minutes
 * @param words what to do when, a sentence each
 */
public record ClockPlan(
        LocalTime start,
        double roundMinutes,
        double doneMinutes,
        double least,
        double most,
        List<Double> shakeAtMinutes,
        List<String> words) {
    private static final double[] ROUNDS = {60, 120, 240, 360, 720, 1440, 2880, 5760};
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    public ClockPlan {
        shakeAtMinutes = List.copyOf(shakeAtMinutes);
        words = List.copyOf(words);
    }

    /**
     * A batch's freeze plan on the clock.
     *
     * @param all its reckoning
     * @param start when it goes in
     * @return the plan
     */
    public static ClockPlan of(Reckoning all, LocalTime start) {
        FreezePlan plan = all.plan();
        Stage done = aim(all);
        double most = plan.rangeMinutes(done).most();
        ClockPlan bare =
                new ClockPlan(
                        start,
                        roundFor(Double.isFinite(most) ? most : plan.minutesTo(done)),
                        plan.minutesTo(done),
                        plan.rangeMinutes(done).least(),
                        most,
                        plan.shakeAtMinutes(),
                        List.of());
        return new ClockPlan(
                start,
                bare.roundMinutes,
                bare.doneMinutes,
                bare.least,
                bare.most,
                bare.shakeAtMinutes,
                bare.say(all));
    }

    /** What is waited for: soft-serve where it is moved in a bath, hard where it stands. */
    static Stage aim(Reckoning all) {
        return inBath(all) ? Stage.SOFT_SERVE : Stage.HARD;
    }

    /** The shortest round that holds it; the shortest of all for what never comes. */
    private static double roundFor(double minutes) {
        return Arrays.stream(ROUNDS)
                .filter(round -> !Double.isFinite(minutes) || round >= minutes)
                .findFirst()
                .orElse(ROUNDS[ROUNDS.length - 1]);
    }

    private static boolean inBath(Reckoning all) {
        return all.batch().method() == Method.BAG || all.batch().method() == Method.CHURN;
    }

    private List<String> say(Reckoning all) {
        List<String> said = new ArrayList<>();
        said.add(Say.of("batch.clock.start", at(0)));
        said.add(cold(all));
        if (all.parts() > 1) {
            said.add(Say.of("batch.clock.parts", String.valueOf(all.parts())));
        }
        if (!all.plan().reaches(Stage.SOFT_SERVE)) {
            said.add(Say.of("batch.clock.never"));
            return said;
        }
        said.add(moved(all));
        for (Stage stage : Stage.values()) {
            if (stage != Stage.THICKENS && all.plan().reaches(stage)) {
                FreezePlan.Between range = all.plan().rangeMinutes(stage);
                boolean later = inBath(all) && stage != Stage.SOFT_SERVE;
                said.add(
                        Say.of(
                                later ? "batch.clock.later" : "batch.clock.done",
                                Written.sentence(stage.words()).replaceAll("\\.$", ""),
                                at(all.plan().minutesTo(stage)),
                                at(range.least()),
                                at(range.most())));
            }
        }
        said.add(Say.of("batch.clock.whole", Told.minutes(roundMinutes)));
        return said;
    }

    private String moved(Reckoning all) {
        String soft = at(all.plan().minutesToSoftServe());
        return switch (all.batch().method()) {
            case BAG -> Say.of("batch.clock.knead", soft);
            case CHURN -> Say.of("batch.clock.crank", soft);
            case TUB -> Say.of("batch.clock.still");
            case SHAKEN ->
                    Say.of(
                            "batch.clock.shake",
                            shakeAtMinutes.stream()
                                    .map(this::at)
                                    .collect(Collectors.joining(", ")));
        };
    }

    private static String cold(Reckoning all) {
        if (all.plan().freeze().cold() instanceof Cold.Bath bath) {
            double parts = all.parts();
            return Say.of(
                    "batch.clock.bath",
                    Written.decimals(0, bath.bath().iceG() * parts),
                    Written.decimals(0, bath.bath().saltG() * parts),
                    Written.decimals(0, all.coldC()));
        }
        return Say.of("batch.clock.freezer", Written.decimals(0, all.batch().freezerC()));
    }

    /**
     * What a clock on the wall says.
     *
     * @param minutes since the batch went in
     * @return such as {@code 14:35}; a word for never
     */
    public String at(double minutes) {
        return Double.isFinite(minutes)
                ? start.plusSeconds(Math.round(60 * minutes)).format(CLOCK)
                : Say.of("batch.never");
    }
}
