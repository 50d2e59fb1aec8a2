package coldwright.workbook.settings;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A user's settings: the type size is per cent of the usual one, {@value #LEAST_TYPE_SIZE_PERCENT}
 * to {@value #MOST_TYPE_SIZE_PERCENT}; every limit of the bench has a value; the window's place is
 * its last one, empty before the first close; {@code others} are lines of the file that this
 * version does not know, saved unchanged.
 */
public record Preferences(
        int typeSizePercent,
        Theme theme,
        TemperatureUnit temperatureUnit,
        MassUnit massUnit,
        Language language,
        Map<BenchLimit, Integer> limits,
        Optional<WindowPlace> window,
        List<String> others) {
    /** The smallest type size, per cent of the usual one. */
    public static final int LEAST_TYPE_SIZE_PERCENT = 50;

    /** The largest type size, per cent of the usual one. */
    public static final int MOST_TYPE_SIZE_PERCENT = 300;

    private static final int USUAL_TYPE_SIZE_PERCENT = 100;

    /** Refuses numbers outside their ranges; missing limits get their defaults. */
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

    /** The default settings. */
    public static Preferences usual() {
        return new Preferences(
                USUAL_TYPE_SIZE_PERCENT,
                Theme.LIGHT,
                TemperatureUnit.C,
                MassUnit.G,
                Language.SYSTEM,
                Map.of(),
                Optional.empty(),
                List.of());
    }

    public int limit(BenchLimit which) {
        return limits.get(which);
    }

    /** Changes the type size, per cent of the usual size; refuses one outside its range. */
    public Preferences withTypeSizePercent(int percent) {
        return new Preferences(
                percent, theme, temperatureUnit, massUnit, language, limits, window, others);
    }

    public Preferences with(Theme newTheme) {
        return new Preferences(
                typeSizePercent,
                newTheme,
                temperatureUnit,
                massUnit,
                language,
                limits,
                window,
                others);
    }

    public Preferences with(TemperatureUnit unit) {
        return new Preferences(
                typeSizePercent, theme, unit, massUnit, language, limits, window, others);
    }

    public Preferences with(MassUnit unit) {
        return new Preferences(
                typeSizePercent, theme, temperatureUnit, unit, language, limits, window, others);
    }

    public Preferences with(Language newLanguage) {
        return new Preferences(
                typeSizePercent,
                theme,
                temperatureUnit,
                massUnit,
                newLanguage,
                limits,
                window,
                others);
    }

    /** Changes a limit of the bench; refuses a value outside its range. */
    public Preferences with(BenchLimit which, int value) {
        Map<BenchLimit, Integer> next = new EnumMap<>(limits);
        next.put(which, value);
        return new Preferences(
                typeSizePercent, theme, temperatureUnit, massUnit, language, next, window, others);
    }

    public Preferences with(WindowPlace place) {
        return new Preferences(
                typeSizePercent,
                theme,
                temperatureUnit,
                massUnit,
                language,
                limits,
                Optional.of(place),
                others);
    }

    /** Sets the lines that this version does not know. */
    Preferences withOthers(List<String> lines) {
        return new Preferences(
                typeSizePercent, theme, temperatureUnit, massUnit, language, limits, window, lines);
    }
}
