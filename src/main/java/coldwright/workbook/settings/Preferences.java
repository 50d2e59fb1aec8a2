package coldwright.workbook.settings;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What a user chose.
 *
 * @param typeSizePercent type size, per cent of the usual one, {@value #LEAST_TYPE_SIZE_PERCENT} to
 *     {@value #MOST_TYPE_SIZE_PERCENT}
 * @param theme colours of the window
 * @param temperatureUnit in what temperatures are shown
 * @param massUnit in what masses are shown
 * @param language in what language the program speaks
 * @param limits every limit of the bench
 * @param others lines of the file that this version does not know, kept as they are
 */
public record Preferences(
        int typeSizePercent,
        Theme theme,
        TemperatureUnit temperatureUnit,
        MassUnit massUnit,
        Language language,
        Map<BenchLimit, Integer> limits,
        List<String> others) {
    /** The smallest type, per cent of the usual size. */
    public static final int LEAST_TYPE_SIZE_PERCENT = 50;

    /** The largest type, per cent of the usual size. */
    public static final int MOST_TYPE_SIZE_PERCENT = 300;

    private static final int USUAL_TYPE_SIZE_PERCENT = 100;

    /**
     * Checks the numbers; limits that are not named get their usual value.
     *
     * @throws IllegalArgumentException if one is outside its range
     */
    public Preferences {
        requireWithin(
                "typeSizePercent",
                typeSizePercent,
                LEAST_TYPE_SIZE_PERCENT,
                MOST_TYPE_SIZE_PERCENT);
        Map<BenchLimit, Integer> all = new EnumMap<>(BenchLimit.class);
        for (BenchLimit limit : BenchLimit.values()) {
            int value = limits.getOrDefault(limit, limit.usual());
            requireWithin(limit.key(), value, limit.least(), limit.most());
            all.put(limit, value);
        }
        limits = Map.copyOf(all);
        others = List.copyOf(others);
    }

    private static void requireWithin(String name, int value, int least, int most) {
        if (value < least || value > most) {
            throw new IllegalArgumentException(
                    "%s is %d; it must be between %d and %d".formatted(name, value, least, most));
        }
    }

    /**
     * What holds until a user chooses.
     *
     * @return the usual values
     */
    public static Preferences usual() {
        return new Preferences(
                USUAL_TYPE_SIZE_PERCENT,
                Theme.LIGHT,
                TemperatureUnit.C,
                MassUnit.G,
                Language.SYSTEM,
                Map.of(),
                List.of());
    }

    /**
     * A limit of the bench.
     *
     * @param which the limit
     * @return its value
     */
    public int limit(BenchLimit which) {
        return limits.get(which);
    }

    /**
     * With another type size.
     *
     * @param percent per cent of the usual size
     * @return new preferences
     * @throws IllegalArgumentException if it is outside its range
     */
    public Preferences withTypeSizePercent(int percent) {
        return new Preferences(percent, theme, temperatureUnit, massUnit, language, limits, others);
    }

    /**
     * With other colours.
     *
     * @param newTheme the colours
     * @return new preferences
     */
    public Preferences with(Theme newTheme) {
        return new Preferences(
                typeSizePercent, newTheme, temperatureUnit, massUnit, language, limits, others);
    }

    /**
     * With another unit of temperature.
     *
     * @param unit the unit
     * @return new preferences
     */
    public Preferences with(TemperatureUnit unit) {
        return new Preferences(typeSizePercent, theme, unit, massUnit, language, limits, others);
    }

    /**
     * With another unit of mass.
     *
     * @param unit the unit
     * @return new preferences
     */
    public Preferences with(MassUnit unit) {
        return new Preferences(
                typeSizePercent, theme, temperatureUnit, unit, language, limits, others);
    }

    /**
     * With another language.
     *
     * @param newLanguage the language
     * @return new preferences
     */
    public Preferences with(Language newLanguage) {
        return new Preferences(
                typeSizePercent, theme, temperatureUnit, massUnit, newLanguage, limits, others);
    }

    /**
     * With another limit of the bench.
     *
     * @param which the limit
     * @param value its value
     * @return new preferences
     * @throws IllegalArgumentException if it is outside its range
     */
    public Preferences with(BenchLimit which, int value) {
        Map<BenchLimit, Integer> next = new EnumMap<>(limits);
        next.put(which, value);
        return new Preferences(
                typeSizePercent, theme, temperatureUnit, massUnit, language, next, others);
    }

    /** With lines that this version does not know. */
    Preferences withOthers(List<String> lines) {
        return new Preferences(
                typeSizePercent, theme, temperatureUnit, massUnit, language, limits, lines);
    }
}
