package coldwright.desk.batch.model;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchReport;
import coldwright.desk.messages.Messages;
import coldwright.science.freezer.Cold;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezer.Stage;
import coldwright.text.DisplayText;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The freeze plan on a kitchen clock that starts when the batch goes in.
 *
 * @param start when it goes in
 * @param roundMinutes one turn of the clock, minutes
 * @param doneMinutes when it is done, minutes: soft-serve if moved, hardened if still; NaN if never
 * @param least the same with good contact, minutes
 * @param most the same with poor contact, minutes
 * @param shakeAtMinutes when to shake it, minutes
 */
public record FreezeSchedule(
        LocalTime start,
        double roundMinutes,
        double doneMinutes,
        double least,
        double most,
        List<Double> shakeAtMinutes) {
    private static final double[] ROUNDS = {60, 120, 240, 360, 720, 1440, 2880, 5760};
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    public FreezeSchedule {
        shakeAtMinutes = List.copyOf(shakeAtMinutes);
    }

    /**
     * A batch's freeze plan on the clock.
     *
     * @param start when it goes in
     */
    public static FreezeSchedule of(BatchAnalysis all, LocalTime start) {
        FreezePlan plan = all.plan();
        Stage done = aim(all);
        FreezePlan.MinuteRange range = plan.rangeMinutes(done);
        double longest = Double.isFinite(range.most()) ? range.most() : plan.minutesTo(done);
        return new FreezeSchedule(
                start,
                roundFor(longest),
                plan.minutesTo(done),
                range.least(),
                range.most(),
                plan.shakeAtMinutes());
    }

    /** The target stage: soft-serve if moved in a bath, hardened if still. */
    static Stage aim(BatchAnalysis all) {
        return all.batch().setup().inBath() ? Stage.SOFT_SERVE : Stage.HARD;
    }

    /** The shortest turn that is long enough; the shortest of all if the stage is never reached. */
    private static double roundFor(double minutes) {
        return Arrays.stream(ROUNDS)
                .filter(round -> !Double.isFinite(minutes) || round >= minutes)
                .findFirst()
                .orElse(ROUNDS[ROUNDS.length - 1]);
    }

    /** Instructions for the batch, a sentence each. */
    public List<String> words(BatchAnalysis all) {
        List<String> said = new ArrayList<>();
        said.add(Messages.of("batch.clock.start", at(0)));
        said.add(cold(all));
        if (all.parts() > 1) {
            said.add(Messages.of("batch.clock.parts", String.valueOf(all.parts())));
        }
        if (!all.plan().reaches(Stage.SOFT_SERVE)) {
            said.add(Messages.of("batch.clock.never"));
            return said;
        }
        said.add(moved(all));
        for (Stage stage : Stage.values()) {
            if (stage != Stage.THICKENS && all.plan().reaches(stage)) {
                FreezePlan.MinuteRange range = all.plan().rangeMinutes(stage);
                boolean later = all.batch().setup().inBath() && stage != Stage.SOFT_SERVE;
                said.add(
                        Messages.of(
                                later ? "batch.clock.later" : "batch.clock.done",
                                DisplayText.sentence(stage.phrase().shown()).replaceAll("\\.$", ""),
                                at(all.plan().minutesTo(stage)),
                                at(range.least()),
                                at(range.most())));
            }
        }
        said.add(Messages.of("batch.clock.whole", BatchReport.time(roundMinutes)));
        return said;
    }

    private String moved(BatchAnalysis all) {
        String soft = at(all.plan().minutesToSoftServe());
        return switch (all.batch().method()) {
            case BAG -> Messages.of("batch.clock.knead", soft);
            case MACHINE -> Messages.of("batch.clock.crank", soft);
            case STILL_TUB -> Messages.of("batch.clock.still");
            case SHAKEN_TUB ->
                    Messages.of(
                            "batch.clock.shake",
                            shakeAtMinutes.stream()
                                    .map(this::at)
                                    .collect(Collectors.joining(", ")));
        };
    }

    private static String cold(BatchAnalysis all) {
        if (all.plan().freeze().cold() instanceof Cold.Bath bath) {
            double parts = all.parts();
            return Messages.of(
                    "batch.clock.bath",
                    bath.bath().iceG() * parts,
                    bath.bath().saltG() * parts,
                    all.coldC());
        }
        return Messages.of("batch.clock.freezer", all.batch().freezerC());
    }

    /**
     * The time of day after some minutes, such as {@code 14:35}; a word for never.
     *
     * @param minutes since the batch went in
     */
    public String at(double minutes) {
        return Double.isFinite(minutes)
                ? start.plusSeconds(Math.round(60 * minutes)).format(CLOCK)
                : BatchReport.time(minutes).shown();
    }
}
