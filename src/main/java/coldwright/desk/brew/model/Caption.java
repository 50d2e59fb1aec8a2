package coldwright.desk.brew.model;

import coldwright.batch.Reckoning;
import coldwright.desk.say.Say;
import coldwright.science.diagnosis.Situation;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezer.Stage;
import coldwright.text.Written;

import java.time.LocalTime;

/** What stands below the small pictures of a batch, in a few words each. */
public final class Caption {
    private Caption() {}

    /**
     * A part of what is in it.
     *
     * @param part the part
     * @return its name and share
     */
    public static String of(Part part) {
        int places = part.percent() < 1 ? 1 : 0;
        return Say.of(
                "batch.tile.part",
                Say.of("batch.part." + part.key()),
                Written.decimals(places, part.percent()));
    }

    /**
     * How it freezes.
     *
     * @param now the batch
     * @return its ice when it is served
     */
    public static String freezing(Glance now) {
        return Say.of(
                "batch.tile.freezing",
                Written.decimals(0, now.curve().icePercentAt(Situation.SERVING_C)),
                Written.decimals(0, Situation.SERVING_C));
    }

    /**
     * How long it takes.
     *
     * @param all the batch in full
     * @return the time to the stage that is aimed at, with its range; or that it never gets there
     */
    public static String clock(Reckoning all) {
        Stage aim = ClockPlan.aim(all);
        FreezePlan.Between range = all.plan().rangeMinutes(aim);
        return all.plan().reaches(aim)
                ? Say.of(
                        "batch.tile.clock",
                        aim.words(),
                        unbroken(all.plan().minutesTo(aim)),
                        unbroken(range.least()),
                        unbroken(range.most()))
                : Say.of("batch.tile.never", aim.words());
    }

    private static String unbroken(double minutes) {
        return Told.minutes(minutes).replace(' ', '\u00a0');
    }

    /**
     * Its clock, for a picture.
     *
     * @param all the batch in full
     * @return a plan from noon
     */
    public static ClockPlan plan(Reckoning all) {
        return ClockPlan.of(all, LocalTime.NOON);
    }

    /**
     * Its crystals.
     *
     * @param all the batch in full
     * @return their size with its range, and when; or that it has none
     */
    public static String crystals(Reckoning all) {
        return all.keeping()
                .map(
                        one ->
                                Say.of(
                                        "batch.tile.crystals",
                                        Told.size(one.tasted().meanUm()),
                                        Told.when(all)))
                .orElse(Say.of("batch.tile.no-crystals"));
    }
}
