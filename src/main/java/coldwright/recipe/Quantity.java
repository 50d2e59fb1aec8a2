package coldwright.recipe;

import coldwright.words.Words;

import java.util.List;
import java.util.Optional;

/**
 * A number and its unit as a cook wrote them.
 *
 * @param text as written
 * @param counts the number; two if it can be read in two ways
 * @param range whether the one number is the middle of a range
 * @param unit its unit; empty if there is none
 * @param size {@code small}, {@code medium}, {@code large} or {@code extra large}; empty if none
 * @param heaped whether spoons are heaped
 */
record Quantity(
        String text,
        List<Double> counts,
        boolean range,
        Optional<CookingUnit> unit,
        String size,
        boolean heaped) {
    static Quantity of(double count, CookingUnit unit, String text) {
        return new Quantity(text, List.of(count), false, Optional.of(unit), "", false);
    }

    Quantity with(double count) {
        return new Quantity(text, List.of(count), range, unit, size, heaped);
    }

    Quantity in(CookingUnit other) {
        return new Quantity(text, counts, range, Optional.of(other), size, heaped);
    }

    Quantity sized(String newSize) {
        return newSize.isEmpty() ? this : new Quantity(text, counts, range, unit, newSize, heaped);
    }

    double count() {
        return counts.get(0);
    }

    boolean is(CookingUnit.Kind kind) {
        return unit.filter(one -> one.is(kind)).isPresent();
    }

    /** The number and its unit, such as {@code 2 tbsp}. */
    String words() {
        return (Words.number(count()) + " " + unit.map(CookingUnit::name).orElse("")).strip();
    }
}
