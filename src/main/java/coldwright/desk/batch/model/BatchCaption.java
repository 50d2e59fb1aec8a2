package coldwright.desk.batch.model;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchReport;
import coldwright.desk.messages.Messages;
import coldwright.science.diagnosis.Situation;
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
        return unbroken(BatchReport.ice(now.mix(), Situation.SERVING_C).as("tile"));
    }

    /**
     * How long it takes.
     *
     * @param all the batch in full
     * @return the time to the stage that is aimed at, with its range; or that it never gets there
     */
    public static String clock(BatchAnalysis all) {
        return unbroken(BatchReport.minutes(all.plan(), FreezeSchedule.aim(all)).as("tile"));
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
        return unbroken(BatchReport.of(all).fact("verdict").as("tile"));
    }

    /** Keeps each number on one line with its unit: tiles are narrow. */
    private static String unbroken(String caption) {
        return caption.replaceAll("(\\d) (%|°C|µm|min|h)(?!\\p{L})", "$1\u00a0$2");
    }
}
