package coldwright.recipe;

import coldwright.recipe.CookingUnit.Kind;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/** An amount by itself, such as {@code 2 tbsp} or {@code 1.5 kg}. */
public final class TypedAmount {
    private TypedAmount() {}

    /** An amount typed by itself, in which a point is always a decimal point. */
    static Optional<QuantityScanner> scan(String amount) {
        String decimal = amount.strip().replaceAll("(?<=\\d)\\.(\\d{3})(?!\\d)", ".$10");
        return QuantityScanner.scan(LineText.plain(decimal));
    }

    /** Whether a text is an amount, such as {@code 2 tbsp}. */
    public static boolean isAmount(String amount) {
        return scan(amount).filter(found -> found.rest().isBlank()).isPresent();
    }

    /** Whether an amount is a mass, or a number alone. */
    public static boolean isWeight(String amount) {
        return scan(amount)
                .map(QuantityScanner::quantity)
                .filter(one -> one.is(Kind.MASS) || one.unit().isEmpty() && one.size().isEmpty())
                .isPresent();
    }

    /** A mass as typed, g; a number alone is grams; empty if it is none. */
    public static OptionalDouble grams(String amount) {
        return measured(amount, CookingUnit.GRAM);
    }

    /** A volume as typed, L; empty if it is none, or may mean two things. */
    public static OptionalDouble litres(String amount) {
        OptionalDouble volumeMl =
                scan(amount).filter(one -> one.quantity().unit().isPresent()).isPresent()
                        ? measured(amount, CookingUnit.MILLILITRE)
                        : OptionalDouble.empty();
        return volumeMl.isPresent()
                ? OptionalDouble.of(volumeMl.getAsDouble() / 1000)
                : OptionalDouble.empty();
    }

    private static OptionalDouble measured(String amount, CookingUnit usual) {
        return scan(amount)
                .filter(found -> found.rest().isBlank())
                .map(QuantityScanner::quantity)
                .filter(one -> one.unit().orElse(usual).is(usual.kind()))
                .filter(one -> one.unit().orElse(usual).amounts().size() == 1)
                .map(one -> one.count() * one.unit().orElse(usual).amounts().get(0))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /** An amount multiplied, its number as {@code format} writes it; the unit stays. */
    public static String times(String amount, double factor, DoubleFunction<String> format) {
        return scan(amount)
                .map(QuantityScanner::quantity)
                .map(
                        one ->
                                String.join(
                                        " ",
                                        format.apply(one.count() * factor),
                                        one.size(),
                                        one.unit().map(CookingUnit::name).orElse("")))
                .map(words -> words.replaceAll(" +", " ").strip())
                .orElse(amount);
    }
}
