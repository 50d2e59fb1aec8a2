package coldwright.published;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One published value and what the program made of it.
 *
 * @param room the package of the science that it belongs to
 * @param table the published table
 * @param quantity what was compared
 * @param unit its unit; empty for none
 * @param fitted whether the row set a constant
 * @param where which row
 * @param least the published value, or the lower end of the published range
 * @param most the published value, or the upper end of the published range
 * @param error computed − published, zero inside a published range
 * @param tolerance what is allowed
 */
record Comparison(
        String room,
        String table,
        String quantity,
        String unit,
        boolean fitted,
        String where,
        double least,
        double most,
        double error,
        Tolerance tolerance) {
    private static final int FIELDS = 13;

    /** The published value, or the middle of the range. */
    double published() {
        return (least + most) / 2;
    }

    /** The error in the tolerance's measure: the unit, or %. */
    double measured() {
        return tolerance.measure(error, published());
    }

    /** The unit of {@link #measured}. */
    String measuredUnit() {
        return tolerance.isShare() ? "%" : unit;
    }

    boolean within() {
        return measured() <= tolerance.size();
    }

    String line() {
        return String.join(
                "\t",
                room,
                table,
                quantity,
                unit,
                fitted ? "fit" : "check",
                where,
                number(least),
                number(most),
                number(error),
                number(tolerance.size()),
                tolerance.isShare() ? "share" : "unit",
                tolerance.reason(),
                tolerance.goal().map(Goal::name).orElse("-"));
    }

    static Comparison read(String line) {
        List<String> f = new ArrayList<>(List.of(line.split("\t", -1)));
        if (f.size() != FIELDS) {
            throw new IllegalArgumentException(
                    "a line of figures has %d fields and must have %d: %s"
                            .formatted(f.size(), FIELDS, line));
        }
        Optional<Goal> goal =
                f.get(12).equals("-") ? Optional.empty() : Optional.of(Goal.valueOf(f.get(12)));
        return new Comparison(
                f.get(0),
                f.get(1),
                f.get(2),
                f.get(3),
                f.get(4).equals("fit"),
                f.get(5),
                Double.parseDouble(f.get(6)),
                Double.parseDouble(f.get(7)),
                Double.parseDouble(f.get(8)),
                new Tolerance(
                        Double.parseDouble(f.get(9)), f.get(10).equals("share"), f.get(11), goal));
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.12g", value);
    }
}
