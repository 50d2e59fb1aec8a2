package coldwright.workbook.settings;

import static coldwright.workbook.entry.WorkbookText.refusal;

import coldwright.workbook.entry.ThreeWay;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A user's settings: the type size is per cent of the usual one, {@value #LEAST_TYPE_SIZE_PERCENT}
 * to {@value #MOST_TYPE_SIZE_PERCENT}; every choice has a value, by the enum of its values, and
 * every limit of the bench; the window's place is its last one, empty before the first close;
 * {@code others} are lines of the file that this version does not know, saved unchanged.
 */
public record Preferences(
        int typeSizePercent,
        Map<Class<?>, Enum<?>> choices,
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
        choices = Map.copyOf(choices);
        limits = Map.copyOf(all);
        others = List.copyOf(others);
    }

    private static void requireWithin(String name, int value, int least, int most) {
        if (value < least || value > most) {
            throw refusal("setting.range", name, value, least, most);
        }
    }

    /** The default settings. */
    public static Preferences usual() {
        return new Preferences(
                USUAL_TYPE_SIZE_PERCENT,
                Map.of(
                        Theme.class, Theme.LIGHT,
                        TemperatureUnit.class, TemperatureUnit.C,
                        MassUnit.class, MassUnit.G,
                        CodeView.class, CodeView.ESSENTIAL),
                Language.SYSTEM,
                Map.of(),
                Optional.empty(),
                List.of());
    }

    public Theme theme() {
        return (Theme) choices.get(Theme.class);
    }

    public TemperatureUnit temperatureUnit() {
        return (TemperatureUnit) choices.get(TemperatureUnit.class);
    }

    public MassUnit massUnit() {
        return (MassUnit) choices.get(MassUnit.class);
    }

    public CodeView codeView() {
        return (CodeView) choices.get(CodeView.class);
    }

    public int limit(BenchLimit which) {
        return limits.get(which);
    }

    /** Changes the type size, per cent of the usual size; refuses one outside its range. */
    public Preferences withTypeSizePercent(int percent) {
        return new Preferences(percent, choices, language, limits, window, others);
    }

    /** Changes the theme, a unit or how much code is shown. */
    public Preferences with(Enum<?> choice) {
        Map<Class<?>, Enum<?>> next = new HashMap<>(choices);
        if (next.put(choice.getDeclaringClass(), choice) == null) {
            throw new IllegalArgumentException(choice.getDeclaringClass() + " isn't a setting");
        }
        return new Preferences(typeSizePercent, next, language, limits, window, others);
    }

    public Preferences with(Language newLanguage) {
        return new Preferences(typeSizePercent, choices, newLanguage, limits, window, others);
    }

    /** Changes a limit of the bench; refuses a value outside its range. */
    public Preferences with(BenchLimit which, int value) {
        Map<BenchLimit, Integer> next = new EnumMap<>(limits);
        next.put(which, value);
        return new Preferences(typeSizePercent, choices, language, next, window, others);
    }

    public Preferences with(WindowPlace place) {
        return new Preferences(
                typeSizePercent, choices, language, limits, Optional.of(place), others);
    }

    /** Sets the lines that this version does not know. */
    Preferences withOthers(List<String> lines) {
        return new Preferences(typeSizePercent, choices, language, limits, window, lines);
    }

    /**
     * Merges the settings of two windows since their common ancestor, key by key; where both
     * changed one, mine.
     */
    public static ThreeWay.Merged<Preferences> merge(
            Preferences base, Preferences mine, Preferences theirs) {
        ThreeWay way = new ThreeWay();
        Map<Class<?>, Enum<?>> choices = new HashMap<>();
        for (Class<?> kind : mine.choices.keySet()) {
            choices.put(kind, way.choose(base, mine, theirs, all -> all.choices.get(kind)));
        }
        Map<BenchLimit, Integer> limits = new EnumMap<>(BenchLimit.class);
        for (BenchLimit limit : BenchLimit.values()) {
            limits.put(limit, way.choose(base, mine, theirs, all -> all.limit(limit)));
        }
        return way.merged(
                new Preferences(
                        way.choose(base, mine, theirs, Preferences::typeSizePercent),
                        choices,
                        way.choose(base, mine, theirs, Preferences::language),
                        limits,
                        way.choose(base, mine, theirs, Preferences::window),
                        way.choose(base, mine, theirs, Preferences::others)));
    }
}
