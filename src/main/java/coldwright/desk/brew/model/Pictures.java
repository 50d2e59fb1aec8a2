package coldwright.desk.brew.model;

import coldwright.batch.Keeping;
import coldwright.batch.Reckoning;
import coldwright.desk.say.Say;
import coldwright.figure.Figure;
import coldwright.figure.Numbers;
import coldwright.figure.Series;
import coldwright.science.crystal.CrystalMoment;
import coldwright.science.crystal.CrystalStory;
import coldwright.science.diagnosis.Situation;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezer.Moment;
import coldwright.science.freezer.Stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A batch's figures: what is in it, how it freezes, on what clock, and its crystals over days. */
public final class Pictures {
    private static final double COLDEST_C = -30;
    private static final int CURVE_POINTS = 121;
    private static final int MOST_POINTS = 120;
    private static final double HOURS_FROM_MINUTES = 240;

    /** Crystals below this are not felt; the batch file's reckoning says so too. */
    private static final double SMOOTH_UM = 50;

    private Pictures() {}

    /**
     * Shares of the mass as bars.
     *
     * @param glance the batch
     * @return water, sugars, fat, protein and the rest, in % of the mass
     */
    public static Figure inside(Glance glance) {
        List<Part> parts = Part.of(glance.mix());
        List<String> words =
                parts.stream().map(part -> Say.of("batch.part." + part.key())).toList();
        double[] percents = parts.stream().mapToDouble(Part::percent).toArray();
        return Figure.of(Say.of("batch.plate.inside"))
                .x("", "")
                .y(Say.of("batch.axis.share"), "%")
                .bars(Say.of("batch.axis.share"), words, percents);
    }

    /**
     * The freezing curve with the temperatures that matter.
     *
     * @param glance the batch
     * @return ice in % of the water by temperature
     */
    public static Figure freezing(Glance glance) {
        double[] temperaturesC = new double[CURVE_POINTS];
        double[] icePercent = new double[CURVE_POINTS];
        for (int i = 0; i < CURVE_POINTS; i++) {
            temperaturesC[i] = COLDEST_C * i / (CURVE_POINTS - 1);
            icePercent[i] = glance.curve().icePercentAt(temperaturesC[i]);
        }
        return Figure.of(Say.of("batch.plate.freezing"))
                .x(Say.of("batch.axis.temperature"), "°C")
                .y(Say.of("batch.axis.ice"), "%")
                .xBetween(COLDEST_C, 0)
                .yBetween(0, 100)
                .line(Say.of("batch.series.ice"), temperaturesC, icePercent)
                .markX(Say.of("batch.mark.serving"), Situation.SERVING_C)
                .markX(Say.of("batch.mark.storing"), glance.batch().freezerC());
    }

    /**
     * The freeze plan on a clock.
     *
     * @param all the reckoning
     * @return ice in % of the water by the minute or hour, stages marked
     */
    public static Figure clock(Reckoning all) {
        FreezePlan plan = all.plan();
        double lastMinute = 0;
        for (Stage stage : Stage.values()) {
            if (plan.reaches(stage)) {
                lastMinute = Math.max(lastMinute, plan.minutesTo(stage));
            }
        }
        List<Moment> course = plan.course();
        double endMinute =
                lastMinute > 0
                        ? 1.08 * lastMinute
                        : course.isEmpty() ? 1 : course.get(course.size() - 1).minute();
        boolean hours = endMinute > HOURS_FROM_MINUTES;
        double per = hours ? 60 : 1;
        List<Double> times = new ArrayList<>();
        List<Double> ice = new ArrayList<>();
        double gap = endMinute / MOST_POINTS;
        double next = 0;
        for (Moment moment : course) {
            if (moment.minute() >= next && moment.minute() <= endMinute) {
                times.add(moment.minute() / per);
                ice.add(moment.icePercent());
                next = moment.minute() + gap;
            }
        }
        Figure figure =
                Figure.of(Say.of("batch.plate.clock"))
                        .x(Say.of("batch.axis.time"), hours ? "h" : "min")
                        .y(Say.of("batch.axis.ice"), "%")
                        .yBetween(0, 100)
                        .xBetween(0, endMinute / per)
                        .line(Say.of("batch.series.ice"), array(times), array(ice));
        for (Stage stage : Stage.values()) {
            if (plan.reaches(stage)) {
                figure = figure.markX(stage.words(), plan.minutesTo(stage) / per);
            }
        }
        return figure;
    }

    /**
     * The crystals over two weeks in the freezer, or the days that the batch was kept.
     *
     * @param all the reckoning
     * @return their mean size with its range by the day; empty if it keeps too little ice
     */
    public static Optional<Figure> crystals(Reckoning all) {
        if (all.keeping().isEmpty()) {
            return Optional.empty();
        }
        Keeping keeping = all.keeping().get();
        List<CrystalMoment> drawn = keeping.drawn().timeline();
        List<CrystalMoment> whole = keeping.kept().orElse(keeping.fortnight()).timeline();
        double startH = drawn.isEmpty() ? 0 : drawn.get(drawn.size() - 1).hours();
        List<Double> days = new ArrayList<>();
        List<Double> low = new ArrayList<>();
        List<Double> middle = new ArrayList<>();
        List<Double> high = new ArrayList<>();
        for (CrystalMoment moment : whole) {
            if (moment.hours() >= startH && moment.meanUm().middle() > 0) {
                days.add((moment.hours() - startH) / 24);
                low.add(moment.meanUm().low());
                middle.add(moment.meanUm().middle());
                high.add(moment.meanUm().high());
            }
        }
        if (days.size() < 2) {
            return Optional.empty();
        }
        Figure figure =
                Figure.of(Say.of("batch.plate.crystals"))
                        .x(Say.of("batch.axis.days"), "")
                        .y(Say.of("batch.axis.crystals"), "µm")
                        .plus(
                                new Series.Band(
                                        Say.of("batch.series.range"),
                                        Numbers.of(array(days)),
                                        Numbers.of(array(low)),
                                        Numbers.of(array(high))))
                        .line(Say.of("batch.series.mean"), array(days), array(middle))
                        .markY(Say.of("batch.mark.smooth"), SMOOTH_UM);
        return Optional.of(
                keeping.steady().map(steady -> withSteady(figure, steady, startH)).orElse(figure));
    }

    /** The same days in a freezer that did not swing, beside it. */
    private static Figure withSteady(Figure figure, CrystalStory steady, double startH) {
        List<CrystalMoment> moments =
                steady.timeline().stream()
                        .filter(one -> one.hours() >= startH && one.meanUm().middle() > 0)
                        .toList();
        return figure.line(
                Say.of("batch.series.steady"),
                moments.stream().mapToDouble(one -> (one.hours() - startH) / 24).toArray(),
                moments.stream().mapToDouble(one -> one.meanUm().middle()).toArray());
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
