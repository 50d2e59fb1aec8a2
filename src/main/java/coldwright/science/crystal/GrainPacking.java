package coldwright.science.crystal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * Packs crystals side by side in a repeating field: soft discs push each other apart until hardly
 * any overlap, then each gets its cell of the power diagram, cut back to its own area.
 */
final class GrainPacking {
    private static final int FIRST_ROUNDS = 400;
    private static final int LATER_ROUNDS = 200;

    /** Factor by which discs push as if larger, where there is room, so that gaps are even. */
    private static final double APART = 1.5;

    /** Densest packing of discs of mixed sizes in a plane, share of the area. */
    private static final double CLOSEST = 0.8;

    /** Distance of the two blunted corners from the sharp one, share of the side. */
    private static final double[] BLUNTING = {0.25, 0.12, 0};

    /** Overlaps of less than half a percent are ignored. */
    private static final double TOUCHING = 0.99;

    private static final double[] SIDES = {-1, 0, 1};

    private final double width;
    private final double height;
    private final Random random;
    private double[] x = {};
    private double[] y = {};
    private double[] r = {};

    GrainPacking(double width, double height, long seed) {
        this.width = width;
        this.height = height;
        random = new Random(seed);
    }

    /** Takes new sizes, the largest first; the smallest crystals vanish if there are fewer. */
    void pack(double[] diameters) {
        int before = x.length;
        x = Arrays.copyOf(x, diameters.length);
        y = Arrays.copyOf(y, diameters.length);
        r = new double[diameters.length];
        double area = 0;
        for (int i = 0; i < r.length; i++) {
            r[i] = diameters[i] / 2;
            area += Math.PI * r[i] * r[i];
            if (i >= before) {
                x[i] = random.nextDouble() * width;
                y[i] = random.nextDouble() * height;
            }
        }
        double share = area / (width * height);
        double apart = Math.max(1, Math.min(APART, Math.sqrt(CLOSEST / share)));
        int rounds = before == 0 ? FIRST_ROUNDS : LATER_ROUNDS;
        for (int n = 0; n < rounds && push(apart); n++) {}
    }

    /** Pushes overlapping discs apart; false if there are none. */
    private boolean push(double apart) {
        boolean any = false;
        for (int i = 0; i < r.length; i++) {
            for (int k = 0; k < i; k++) {
                double dx = near(x[i] - x[k], width);
                double dy = near(y[i] - y[k], height);
                double wanted = apart * (r[i] + r[k]);
                double square = dx * dx + dy * dy;
                if (square < wanted * wanted * TOUCHING) {
                    double distance = Math.max(1e-9, Math.sqrt(square));
                    double move = (wanted - distance) / distance / 2;
                    x[i] = within(x[i] + dx * move, width);
                    y[i] = within(y[i] + dy * move, height);
                    x[k] = within(x[k] - dx * move, width);
                    y[k] = within(y[k] - dy * move, height);
                    any = true;
                }
            }
        }
        return any;
    }

    private static double near(double difference, double period) {
        if (difference > period / 2) {
            return difference - period;
        }
        return difference < -period / 2 ? difference + period : difference;
    }

    private static double within(double value, double period) {
        double rest = value % period;
        return rest < 0 ? rest + period : rest;
    }

    List<Grain> grains() {
        List<Grain> grains = new ArrayList<>();
        for (int i = 0; i < r.length; i++) {
            List<Grain.Corner> cell = cell(i);
            double area = Math.PI * r[i] * r[i];
            List<Grain.Corner> outline = cell;
            for (double blunting : BLUNTING) {
                outline = blunted(cell, blunting);
                if (Grain.area(outline) >= area) {
                    break;
                }
            }
            outline = cutTo(outline, area);
            grains.add(new Grain(x[i], y[i], 2 * r[i], outline));
        }
        return grains;
    }

    /** The part of the field nearer to this disc's rim than to any other's. */
    private List<Grain.Corner> cell(int i) {
        List<Grain.Corner> cell = new ArrayList<>();
        double w = width / 2;
        double h = height / 2;
        cell.add(new Grain.Corner(x[i] - w, y[i] - h));
        cell.add(new Grain.Corner(x[i] + w, y[i] - h));
        cell.add(new Grain.Corner(x[i] + w, y[i] + h));
        cell.add(new Grain.Corner(x[i] - w, y[i] + h));
        double farthest = farthestSquare(cell, i);
        for (int k = 0; k < r.length; k++) {
            double baseX = near(x[k] - x[i], width);
            double baseY = near(y[k] - y[i], height);
            for (double sideX : SIDES) {
                for (double sideY : SIDES) {
                    double dx = baseX + sideX * width;
                    double dy = baseY + sideY * height;
                    double square = dx * dx + dy * dy;
                    if (square > 0) {
                        // beyond the farthest corner nothing is cut
                        double share = 0.5 + (r[i] * r[i] - r[k] * r[k]) / (2 * square);
                        if (share <= 0 || share * share * square < farthest) {
                            cell = cut(cell, i, dx, dy, share * square);
                            farthest = farthestSquare(cell, i);
                        }
                    }
                }
            }
        }
        return cell;
    }

    private double farthestSquare(List<Grain.Corner> cell, int i) {
        double farthest = 0;
        for (Grain.Corner p : cell) {
            double dx = p.xUm() - x[i];
            double dy = p.yUm() - y[i];
            farthest = Math.max(farthest, dx * dx + dy * dy);
        }
        return farthest;
    }

    /** Keeps the part on this disc's side of a line: (p − middle)·d at most as much as given. */
    private List<Grain.Corner> cut(
            List<Grain.Corner> cell, int i, double dx, double dy, double most) {
        double[] beyond = new double[cell.size()];
        boolean any = false;
        for (int n = 0; n < beyond.length; n++) {
            Grain.Corner p = cell.get(n);
            beyond[n] = (p.xUm() - x[i]) * dx + (p.yUm() - y[i]) * dy - most;
            any |= beyond[n] > 0;
        }
        if (!any) {
            return cell;
        }
        List<Grain.Corner> kept = new ArrayList<>();
        for (int n = 0; n < beyond.length; n++) {
            int next = (n + 1) % beyond.length;
            if (beyond[n] <= 0) {
                kept.add(cell.get(n));
            }
            if ((beyond[n] > 0) != (beyond[next] > 0)) {
                kept.add(
                        between(
                                cell.get(n),
                                cell.get(next),
                                beyond[n] / (beyond[n] - beyond[next])));
            }
        }
        return kept;
    }

    private static List<Grain.Corner> blunted(List<Grain.Corner> cell, double blunting) {
        if (blunting == 0) {
            return cell;
        }
        List<Grain.Corner> blunt = new ArrayList<>();
        for (int n = 0; n < cell.size(); n++) {
            Grain.Corner a = cell.get(n);
            Grain.Corner b = cell.get((n + 1) % cell.size());
            blunt.add(between(a, b, blunting));
            blunt.add(between(a, b, 1 - blunting));
        }
        return blunt;
    }

    /** Shrinks an outline about its middle until it has an area. */
    private static List<Grain.Corner> cutTo(List<Grain.Corner> outline, double area) {
        double middleX = outline.stream().mapToDouble(Grain.Corner::xUm).average().orElse(0);
        double middleY = outline.stream().mapToDouble(Grain.Corner::yUm).average().orElse(0);
        double scale = Math.min(1, Math.sqrt(area / Grain.area(outline)));
        return outline.stream()
                .map(
                        p ->
                                new Grain.Corner(
                                        middleX + (p.xUm() - middleX) * scale,
                                        middleY + (p.yUm() - middleY) * scale))
                .toList();
    }

    private static Grain.Corner between(Grain.Corner a, Grain.Corner b, double share) {
        return new Grain.Corner(
                a.xUm() + (b.xUm() - a.xUm()) * share, a.yUm() + (b.yUm() - a.yUm()) * share);
    }
}
