package coldwright.figure;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Converts figures to the reader's units for display: temperatures in °C to °F, differences in K to
 * °F, weights in g to ounces (avoirdupois, 28.349523125 g by definition).
 *
 * @param fahrenheit whether temperatures are shown in °F
 * @param ounces whether weights are shown in ounces
 */
public record UnitConversion(boolean fahrenheit, boolean ounces) {
    /** No conversion: °C and grams. */
    public static final UnitConversion AS_IT_IS = new UnitConversion(false, false);

    /** International avoirdupois ounce, g (international yard and pound agreement, 1959). */
    public static final double OUNCE_G = 28.349523125;

    /** A unit to show, and the conversion to it. */
    private record ConvertedUnit(String unit, DoubleUnaryOperator of) {}

    /** {@return a value in the unit that {@link #unit} gives} */
    public double value(double value, String unit) {
        return exchange(unit).of().applyAsDouble(value);
    }

    /** {@return the unit shown for a unit; the same if it isn't converted} */
    public String unit(String unit) {
        return exchange(unit).unit();
    }

    private ConvertedUnit exchange(String unit) {
        if (fahrenheit && unit.equals("°C")) {
            return new ConvertedUnit("°F", value -> value * 1.8 + 32);
        }
        if (fahrenheit && unit.equals("K")) {
            return new ConvertedUnit("°F", value -> value * 1.8);
        }
        return ounces && unit.equals("g")
                ? new ConvertedUnit("oz", value -> value / OUNCE_G)
                : new ConvertedUnit(unit, value -> value);
    }

    /**
     * {@return whether a figure, as its snippet made it, has a unit to convert; if not, {@link
     * #of(Figure)} changes nothing}
     */
    public boolean exchanges(Figure figure) {
        String x = figure.x().unit();
        String y = figure.y().unit();
        return !unit(x).equals(x) || !unit(y).equals(y);
    }

    /** Converts a figure to these units; the same figure if no unit needs converting. */
    public Figure of(Figure figure) {
        if (!exchanges(figure)) {
            return figure;
        }
        ConvertedUnit x = exchange(figure.x().unit());
        ConvertedUnit y = exchange(figure.y().unit());
        return new Figure(
                figure.title(),
                of(figure.x(), x),
                of(figure.y(), y),
                figure.series().stream().map(one -> one.map(x.of(), y.of())).toList(),
                figure.marks().stream()
                        .map(
                                mark ->
                                        new ReferenceLine(
                                                mark.label(),
                                                mark.across(),
                                                (mark.across() == ReferenceLine.Across.X ? x : y)
                                                        .of()
                                                        .applyAsDouble(mark.at())))
                        .toList(),
                figure.writtenText(),
                figure.sources());
    }

    private static Axis of(Axis axis, ConvertedUnit convertedUnit) {
        return new Axis(
                axis.label(),
                convertedUnit.unit(),
                of(axis.from(), convertedUnit.of()),
                of(axis.to(), convertedUnit.of()));
    }

    private static OptionalDouble of(OptionalDouble end, DoubleUnaryOperator exchange) {
        return end.isPresent() ? OptionalDouble.of(exchange.applyAsDouble(end.getAsDouble())) : end;
    }
}
