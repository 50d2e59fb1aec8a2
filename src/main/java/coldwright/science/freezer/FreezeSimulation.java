package coldwright.science.freezer;

import coldwright.science.bath.ColdRun;
import coldwright.science.thermal.EnthalpyTable;
import coldwright.science.thermal.ThermalCurve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Simulates the freezing of a batch at one reading of the films: first with the chosen cold and
 * motion, then, if it was moved, still in the freezer.
 *
 * <p>A batch that is moved all the time has one temperature and a film at the wall ({@link
 * Motion}); one that is still or stirred now and then is a {@link LayeredBody}.
 */
final class FreezeSimulation {
    private static final double STEP_JPERG = 1;
    private static final double LONGEST_STEP_S = 120;
    private static final double SHORTEST_STEP_S = 0.25;
    private static final int LAYERS = 24;
    private static final double MOVED_LIMIT_S = 6 * 3600;
    private static final double STILL_LIMIT_S = 96 * 3600;

    /** Below this heat flow freezing has stalled, J/g per hour. */
    private static final double STALLED_JPERG_PER_H = 0.2;

    private final Freeze freeze;
    private final Reading reading;
    private final EnthalpyTable table;
    private final double densityKgPerM3;
    private final double volumeL;
    private final double typicalK;
    private final Map<Stage, Double> reachedS = new EnumMap<>(Stage.class);
    private final List<FreezeMoment> course = new ArrayList<>();
    private final List<Double> stirredS = new ArrayList<>();

    private double seconds;
    private double enthalpy;
    private double icePercent;
    private double movedJPerG;
    private double bathSpentS = Double.NaN;
    private ColdRun first;

    FreezeSimulation(Freeze freeze, ThermalCurve curve, Reading reading) {
        this.freeze = freeze;
        this.reading = reading;
        table = curve.table();
        densityKgPerM3 = curve.densityKgPerM3(4);
        volumeL = freeze.massG() / densityKgPerM3;
        typicalK = curve.conductivityWPerMK(-8);
        enthalpy = table.enthalpyJPerG(freeze.startC());
    }

    void go(Stage last) {
        double start = enthalpy;
        ColdRun cold = freeze.cold().start();
        note(cold, 0, middle(), middle());
        if (freeze.motion().isSteady()) {
            moved(cold);
        } else {
            still(freeze.cold(), cold, freeze.motion(), last);
        }
        movedJPerG = start - enthalpy;
        first = cold;
        if (freeze.hardening() != null
                && !freeze.motion().isStill()
                && reachedS.containsKey(Stage.SOFT_SERVE)
                && last.compareTo(Stage.SOFT_SERVE) > 0) {
            still(freeze.hardening(), freeze.hardening().start(), Motion.STILL, last);
        }
    }

    private double middle() {
        return table.temperatureC(enthalpy);
    }

    /** Simulates a batch moved all the time: one temperature. */
    private void moved(ColdRun cold) {
        double areaM2 = freeze.holder().cooledM2(volumeL);
        double wallC = middle();
        double outer = outerCoefficient(freeze.cold());
        Motion motion = freeze.motion();
        double mostFlux = freeze.cold().mostW() / areaM2;
        double limit = seconds + MOVED_LIMIT_S;
        while (!reachedS.containsKey(Stage.SOFT_SERVE) && seconds < limit) {
            double inner = innerCoefficient(wallC, motion);
            double u = 1 / (1 / outer + 1 / inner);
            double flux = Math.min(mostFlux, u * (middle() - cold.temperatureC()));
            wallC = cold.temperatureC() + flux / outer;
            double perGram = (flux * areaM2 - motion.blade().workW()) / freeze.massG();
            if (perGram * 3600 < STALLED_JPERG_PER_H) {
                return;
            }
            double step = step(perGram, limit - seconds);
            double half = enthalpy - 0.5 * step * perGram;
            double fluxHalf =
                    Math.min(mostFlux, u * (table.temperatureC(half) - cold.temperatureC()));
            cold.pass(step, fluxHalf * areaM2 * step);
            enthalpy -= step * (fluxHalf * areaM2 - motion.blade().workW()) / freeze.massG();
            seconds += step;
            passed(step, table.icePercent(enthalpy), Double.POSITIVE_INFINITY);
            note(cold, fluxHalf, middle(), wallC);
        }
    }

    private double step(double perGram, double most) {
        double wanted = STEP_JPERG / Math.max(1e-9, Math.abs(perGram));
        return Math.min(most, Math.max(SHORTEST_STEP_S, Math.min(LONGEST_STEP_S, wanted)));
    }

    private double outerCoefficient(Cold cold) {
        double u = freeze.holder().wall().with(cold.film().coefficientWPerM2K(reading));
        double clearance = freeze.motion().blade().clearanceMm() / 1000;
        return 1 / (1 / u + clearance / typicalK);
    }

    /** Coefficient of the inner film by the penetration of cold between two turns. */
    private double innerCoefficient(double wallC, Motion motion) {
        double bulkC = middle();
        double difference = bulkC - wallC;
        double heat;
        double conduction;
        if (difference < 0.05 || wallC < table.coldestC()) {
            double slope = Math.max(1e-6, table.kelvinPerJPerG(enthalpy));
            heat = 1 / slope;
            conduction = table.conductionPerJPerG(enthalpy) / slope;
        } else {
            double atWall = table.enthalpyJPerG(wallC);
            heat = (enthalpy - atWall) / difference;
            conduction =
                    (table.conductionWPerM(enthalpy) - table.conductionWPerM(atWall)) / difference;
        }
        return 2
                * Math.sqrt(
                        conduction
                                * densityKgPerM3
                                * 1000
                                * heat
                                / (Math.PI * motion.seconds(reading)));
    }

    /** Simulates a batch that is still or stirred at moments: layers. */
    private void still(Cold source, ColdRun cold, Motion motion, Stage last) {
        double u = freeze.holder().wall().with(source.film().coefficientWPerM2K(reading));
        LayeredBody.Span span = freeze.holder().shape(volumeL).span(u / typicalK);
        LayeredBody body = new LayeredBody(table, densityKgPerM3, span, LAYERS);
        body.fill(enthalpy);
        double limit = seconds + STILL_LIMIT_S;
        double began = seconds;
        double nextStir = motion.isStill() ? limit : seconds + motion.secondsBetweenTurns();
        double perGram = 0.05;
        while (!reachedS.containsKey(last) && seconds < limit) {
            double step = step(perGram, Math.min(limit, nextStir) - seconds);
            step = Math.min(step, Math.max(1, (seconds - began) / 4));
            step = Math.max(1e-3, Math.min(step, nextStir - seconds));
            double left = body.step(step, new LayeredBody.Outside(u, cold.temperatureC()));
            cold.pass(step, left * freeze.massG());
            perGram = left / step;
            enthalpy -= left;
            seconds += step;
            passed(step, body.meanIcePercent(), body.middleC());
            double areaM2 = freeze.holder().cooledM2(volumeL);
            note(cold, perGram * freeze.massG() / areaM2, body.profileC());
            if (seconds >= nextStir - 1e-6) {
                if (reachedS.containsKey(Stage.SOFT_SERVE)) {
                    nextStir = limit; // too stiff to stir
                } else {
                    nextStir += motion.secondsBetweenTurns();
                    if (icePercent > 0.5) {
                        body.mix();
                        stirredS.add(seconds);
                    }
                }
            }
            if (perGram * 3600 < STALLED_JPERG_PER_H) {
                return;
            }
        }
    }

    /** Records the stages reached in the last step. */
    private void passed(double step, double nowPercent, double middleC) {
        for (Stage stage : Stage.values()) {
            boolean there =
                    stage == Stage.HARD
                            ? middleC <= Stage.HARD_C && reachedS.containsKey(Stage.SCOOP)
                            : nowPercent >= stage.icePercent();
            if (there && !reachedS.containsKey(stage)) {
                double share =
                        stage == Stage.HARD
                                ? 1
                                : (stage.icePercent() - icePercent)
                                        / Math.max(1e-9, nowPercent - icePercent);
                reachedS.put(stage, seconds - step * (1 - Math.max(0, Math.min(1, share))));
            }
        }
        icePercent = nowPercent;
    }

    private void note(ColdRun cold, double flux, double... insideC) {
        if (Double.isNaN(bathSpentS) && cold.iceG() <= 0) {
            bathSpentS = seconds;
        }
        double[] temperatures = Arrays.copyOf(insideC, insideC.length + 1);
        temperatures[insideC.length] = cold.temperatureC();
        course.add(new FreezeMoment(seconds / 60, icePercent, temperatures, flux, cold.iceG()));
    }

    /** When a stage was reached, minutes; not a number if never. */
    double minutes(Stage stage) {
        Double at = reachedS.get(stage);
        return at == null ? Double.NaN : at / 60;
    }

    List<FreezeMoment> course() {
        return course;
    }

    List<Double> stirredMinutes() {
        return stirredS.stream().map(s -> s / 60).toList();
    }

    /** Heat removed by the first cold, J/g. */
    double firstJPerG() {
        return movedJPerG;
    }

    /** Heat that the room brought to the first cold, J. */
    double roomJ() {
        return first.fromRoomJ();
    }

    /** When the bath's last ice melted, minutes; not a number if it did not. */
    double bathSpentMinutes() {
        return bathSpentS / 60;
    }

    /** Temperature of the first cold when the batch left it, °C. */
    double bathEndC() {
        return first.temperatureC();
    }

    double volumeL() {
        return volumeL;
    }
}
