package coldwright.science.emulsion;

import java.util.ArrayList;
import java.util.List;

/** Globules by the square of the field that they are in, to find neighbours. */
final class NeighbourGrid {
    private final double squareUm;
    private final int columns;
    private final int rows;
    private final List<List<Globule>> squares = new ArrayList<>();
    private double largestUm;

    /** Makes squares no smaller than a 60th of the field, so that few have to be searched. */
    NeighbourGrid(Slide slide, double largestDiameterUm) {
        squareUm = Math.max(slide.widthUm() / 60, Math.min(largestDiameterUm, slide.widthUm() / 8));
        columns = (int) Math.ceil(slide.widthUm() / squareUm);
        rows = (int) Math.ceil(slide.heightUm() / squareUm);
        for (int i = 0; i < columns * rows; i++) {
            squares.add(new ArrayList<>());
        }
    }

    void add(Globule globule) {
        squares.get(row(globule.yUm()) * columns + column(globule.xUm())).add(globule);
        largestUm = Math.max(largestUm, globule.radiusUm());
    }

    /** Largest overlap of a globule with one in the grid; zero or less if it is free. */
    double overlapUm(Globule globule) {
        double reach = globule.radiusUm() + largestUm;
        double worst = 0;
        for (int r = row(globule.yUm() - reach); r <= row(globule.yUm() + reach); r++) {
            for (int c = column(globule.xUm() - reach); c <= column(globule.xUm() + reach); c++) {
                for (Globule other : squares.get(r * columns + c)) {
                    double apart =
                            Math.hypot(other.xUm() - globule.xUm(), other.yUm() - globule.yUm());
                    worst = Math.max(worst, other.radiusUm() + globule.radiusUm() - apart);
                }
            }
        }
        return worst;
    }

    private int column(double xUm) {
        return Math.max(0, Math.min(columns - 1, (int) (xUm / squareUm)));
    }

    private int row(double yUm) {
        return Math.max(0, Math.min(rows - 1, (int) (yUm / squareUm)));
    }
}
