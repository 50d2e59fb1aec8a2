package coldwright.science.freezer;

import coldwright.science.thermal.EnthalpyTable;

/**
 * A tub marched in two directions, explicitly: independent of {@link LayeredBody} and {@link
 * Shape}.
 */
final class RoundTub {
    private final EnthalpyTable table;
    private final int n;
    private final double dr;
    private final double dz;
    private final double gramsPerM3;
    final double[][] enthalpy;
    private final double film;

    RoundTub(EnthalpyTable table, double densityKgPerM3, double[] sizesMm, double film, int n) {
        this.table = table;
        this.n = n;
        this.film = film;
        dr = sizesMm[0] / 2000 / n;
        dz = sizesMm[1] / 2000 / n;
        gramsPerM3 = 1000 * densityKgPerM3;
        enthalpy = new double[n][n];
    }

    /** One explicit step with half the tub's height, rings by slices, points in their middles. */
    void step(double seconds, double outsideC) {
        double[][] inflow = new double[n][n];
        for (int i = 0; i < n; i++) {
            double ringArea = Math.PI * dr * dr * (2 * i + 1);
            double wall = 2 * Math.PI * (i + 1) * dr * dz;
            for (int j = 0; j < n; j++) {
                double theta = table.conductionWPerM(enthalpy[i][j]);
                double out =
                        i + 1 < n
                                ? wall * (theta - table.conductionWPerM(enthalpy[i + 1][j])) / dr
                                : wall * lost(enthalpy[i][j], dr / 2, outsideC);
                inflow[i][j] -= out;
                if (i + 1 < n) {
                    inflow[i + 1][j] += out;
                }
                double up =
                        j + 1 < n
                                ? ringArea
                                        * (theta - table.conductionWPerM(enthalpy[i][j + 1]))
                                        / dz
                                : ringArea * lost(enthalpy[i][j], dz / 2, outsideC);
                inflow[i][j] -= up;
                if (j + 1 < n) {
                    inflow[i][j + 1] += up;
                }
            }
        }
        for (int i = 0; i < n; i++) {
            double grams = gramsPerM3 * Math.PI * dr * dr * (2 * i + 1) * dz;
            for (int j = 0; j < n; j++) {
                enthalpy[i][j] += seconds * inflow[i][j] / grams;
            }
        }
    }

    /** Flow per area through half a step of content and the film, W/m². */
    private double lost(double h, double halfM, double outsideC) {
        double t = table.temperatureC(h);
        double k = conductivity(h);
        return (t - outsideC) / (halfM / k + 1 / film);
    }

    private double conductivity(double h) {
        double step = 2;
        double dt = table.temperatureC(h) - table.temperatureC(h - step);
        return dt < 1e-9 ? 1 : (table.conductionWPerM(h) - table.conductionWPerM(h - step)) / dt;
    }

    double meanIcePercent() {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                sum += (2 * i + 1) * table.icePercent(enthalpy[i][j]);
            }
        }
        return sum / ((double) n * n * n);
    }

    double middleC() {
        return table.temperatureC(enthalpy[0][0]);
    }
}
