package coldwright.desk.batch.model;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchReport;
import coldwright.desk.messages.Messages;
import coldwright.science.diagnosis.Situation;
import coldwright.text.DisplayText;

import java.time.LocalTime;

/** Short captions for the tiles of a batch. */
public final class BatchCaption {
    private BatchCaption() {}

    /** Name and share of a component. */
    public static String of(BatchShare part) {
        int places = part.percent() < 1 ? 1 : 0;
        return Messages.of(
                "batch.tile.part",
                Messages.of("batch.part." + part.key()),
                DisplayText.decimals(places, part.percent()));
    }

    /** Ice at serving. */
    public static String freezing(BatchPreview now) {
        return unbroken(BatchReport.ice(now.mix(), Situation.SERVING_C).as("tile"));
    }

    /**
     * Time to the target stage with its range, or that it never gets there.
     *
     * @param all the batch's analysis
     */
    public static String clock(BatchAnalysis all) {
        return unbroken(BatchReport.minutes(all.plan(), FreezeSchedule.aim(all)).as("tile"));
    }

    /**
     * A freeze plan from noon, for a picture.
     *
     * @param all the batch's analysis
     */
    public static FreezeSchedule plan(BatchAnalysis all) {
        return FreezeSchedule.of(all, LocalTime.NOON);
    }

    /**
     * Crystal size with its range and time, or that there are no crystals.
     *
     * @param all the batch's analysis
     */
    public static String crystals(BatchAnalysis all) {
        return unbroken(BatchReport.verdict(all).as("tile"));
    }

    /** Keeps each number on one line with its unit: tiles are narrow. */
    private static String unbroken(String caption) {
        return caption.replaceAll("(\\d) (%|°C|µm|min|h)(?!\\p{L})", "$1\u00a0$2");
    }
}
