package coldwright.desk.batch.model;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchPreview;
import coldwright.batch.CrystalsInStorage;
import coldwright.desk.messages.Messages;
import coldwright.figure.Figure;
import coldwright.figure.NumberColumn;
import coldwright.figure.Series;
import coldwright.science.crystal.CrystalMoment;
import coldwright.science.crystal.CrystalStory;
import coldwright.science.crystal.Texture;
import coldwright.science.freezer.FreezeMoment;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezer.Stage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** A batch's figures: composition, freezing curve, freezing time, and crystals over days. */
public final class BatchFigures {
    /** Where the freezing curve ends on the page, °C. */
    public static final double COLDEST_C = -30;

    private static final int MOST_POINTS = 120;
    private static final double HOURS_FROM_MINUTES = 240;

    private BatchFigures() {}

    /** Composition as bars: water, sugars, fat, protein and the rest, in % of the mass. */
    public static Figure inside(BatchPreview batchPreview) {
        List<BatchShare> parts = BatchShare.of(batchPreview.mix());
        List<String> words = parts.stream().map(BatchShare::name).toList();
        double[] percents = parts.stream().mapToDouble(BatchShare::percent).toArray();
        return Figure.of(Messages.of("batch.plate.inside"))
                .x("", "")
                .y(Messages.of("batch.axis.share"), "%")
                .bars(Messages.of("batch.axis.share"), words, percents);
    }

    /** The freezing curve with the temperatures that matter: ice in % of the water. */
    public static Figure freezing(BatchPreview batchPreview) {
        return Figure.of(Messages.of("batch.plate.freezing"))
                .x(Messages.of("batch.axis.temperature"), "°C")
                .y(Messages.of("batch.axis.ice"), "%")
                .xBetween(COLDEST_C, 0)
                .yBetween(0, 100)
                .line(
                        Messages.of("batch.series.ice"),
                        COLDEST_C,
                        0,
                        batchPreview.curve()::icePercentAt)
                .markX(Messages.of("batch.mark.serving"), batchPreview.servingC())
                .markX(Messages.of("batch.mark.storing"), batchPreview.batch().freezerC());
    }

    /** The freeze plan: ice in % of the water by the minute or hour, with the stages marked. */
    public static Figure clock(BatchAnalysis all) {
        FreezePlan plan = all.plan();
        double lastMinute =
                Arrays.stream(Stage.values())
                        .filter(plan::reaches)
                        .mapToDouble(plan::minutesTo)
                        .max()
                        .orElse(0);
        List<FreezeMoment> course = plan.course();
        double endMinute =
                lastMinute > 0
                        ? 1.08 * lastMinute
                        : course.isEmpty() ? 1 : course.get(course.size() - 1).minute();
        boolean hours = endMinute > HOURS_FROM_MINUTES;
        double per = hours ? 60 : 1;
        List<FreezeMoment> shown = new ArrayList<>();
        double next = 0;
        for (FreezeMoment moment : course) {
            if (moment.minute() >= next && moment.minute() <= endMinute) {
                shown.add(moment);
                next = moment.minute() + endMinute / MOST_POINTS;
            }
        }
        Figure figure =
                Figure.of(Messages.of("batch.plate.clock"))
                        .x(Messages.of("batch.axis.time"), hours ? "h" : "min")
                        .y(Messages.of("batch.axis.ice"), "%")
                        .yBetween(0, 100)
                        .xBetween(0, endMinute / per)
                        .line(
                                Messages.of("batch.series.ice"),
                                column(shown, one -> one.minute() / per),
                                column(shown, FreezeMoment::icePercent));
        for (Stage stage : Stage.values()) {
            if (plan.reaches(stage)) {
                figure = figure.markX(stage.phrase().shown(), plan.minutesTo(stage) / per);
            }
        }
        return figure;
    }

    /**
     * The crystals over two weeks in the freezer, or over the batch's storage time.
     *
     * @return mean size with its range by the day; empty if too little ice is left
     */
    public static Optional<Figure> crystals(BatchAnalysis all) {
        if (all.crystals().isEmpty()) {
            return Optional.empty();
        }
        CrystalsInStorage crystalsInStorage = all.crystals().get();
        List<CrystalMoment> drawn = crystalsInStorage.drawn().timeline();
        double startH = drawn.isEmpty() ? 0 : drawn.get(drawn.size() - 1).hours();
        List<CrystalMoment> kept =
                stored(
                        crystalsInStorage
                                .kept()
                                .or(crystalsInStorage::fortnight)
                                .orElseGet(crystalsInStorage::night),
                        startH);
        if (kept.size() < 2) {
            return Optional.empty();
        }
        double[] days = column(kept, one -> (one.hours() - startH) / 24);
        Figure figure =
                Figure.of(Messages.of("batch.plate.crystals"))
                        .x(Messages.of("batch.axis.days"), "")
                        .y(Messages.of("batch.axis.crystals"), "µm")
                        .plus(
                                new Series.Band(
                                        Messages.of("batch.series.range"),
                                        NumberColumn.of(days),
                                        NumberColumn.of(column(kept, one -> one.meanUm().low())),
                                        NumberColumn.of(column(kept, one -> one.meanUm().high()))))
                        .line(
                                Messages.of("batch.series.mean"),
                                days,
                                column(kept, one -> one.meanUm().middle()))
                        .markY(Messages.of("batch.mark.smooth"), Texture.SMOOTH.upToUm());
        if (crystalsInStorage.steady().isEmpty()) {
            return Optional.of(figure);
        }
        List<CrystalMoment> steady = stored(crystalsInStorage.steady().get(), startH);
        return Optional.of(
                figure.line(
                        Messages.of("batch.series.steady"),
                        column(steady, one -> (one.hours() - startH) / 24),
                        column(steady, one -> one.meanUm().middle())));
    }

    /** A batch's crystals from a time on, while there are any. */
    private static List<CrystalMoment> stored(CrystalStory story, double startH) {
        return story.timeline().stream()
                .filter(one -> one.hours() >= startH && one.meanUm().middle() > 0)
                .toList();
    }

    private static <T> double[] column(List<T> rows, ToDoubleFunction<T> value) {
        return rows.stream().mapToDouble(value).toArray();
    }
}
