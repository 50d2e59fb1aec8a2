package coldwright.desk.batch.model;

import coldwright.batch.BatchAnalysis;
import coldwright.desk.messages.Messages;
import coldwright.science.diagnosis.Situation;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezer.Stage;
import coldwright.text.DisplayText;

import java.time.LocalTime;

/** What stands below the small pictures of a batch, in a few words each. */
public final class BatchCaption {
    private BatchCaption() {}

    /**
     * A part of what is in it.
     *
     * @param part the part
     * @return its name and share
     */
    public static String of(BatchShare part) {
        int places = part.percent() < 1 ? 1 : 0;
        return Messages.of(
                "batch.tile.part",
                Messages.of("batch.part." + part.key()),
                DisplayText.decimals(places, part.percent()));
    }

    /**
     * How it freezes.
     *
     * @param now the batch
     * @return its ice when it is served
     */
    public static String freezing(BatchPreview now) {
        return Messages.of(
                "batch.tile.freezing",
                DisplayText.decimals(0, now.curve().icePercentAt(Situation.SERVING_C)),
                DisplayText.decimals(0, Situation.SERVING_C));
    }

    /**
     * How long it takes.
     *
     * @param all the batch in full
     * @return the time to the stage that is aimed at, with its range; or that it never gets there
     */
    public static String clock(BatchAnalysis all) {
        Stage aim = FreezeSchedule.aim(all);
        FreezePlan.MinuteRange range = all.plan().rangeMinutes(aim);
        return all.plan().reaches(aim)
                ? Messages.of(
                        "batch.tile.clock",
                        aim.words(),
                        unbroken(all.plan().minutesTo(aim)),
                        unbroken(range.least()),
                        unbroken(range.most()))
                : Messages.of("batch.tile.never", aim.words());
    }

    private static String unbroken(double minutes) {
        return BatchSentences.minutes(minutes).replace(' ', '\u00a0');
    }

    /**
     * Its clock, for a picture.
     *
     * @param all the batch in full
     * @return a plan from noon
     */
    public static FreezeSchedule plan(BatchAnalysis all) {
        return FreezeSchedule.of(all, LocalTime.NOON);
    }

    /**
     * Its crystals.
     *
     * @param all the batch in full
     * @return their size with its range, and when; or that it has none
     */
    public static String crystals(BatchAnalysis all) {
        return all.crystals()
                .map(
                        one ->
                                Messages.of(
                                        "batch.tile.crystals",
                                        BatchSentences.size(one.tasted().meanUm()),
                                        BatchSentences.when(all)))
                .orElse(Messages.of("batch.tile.no-crystals"));
    }
}
