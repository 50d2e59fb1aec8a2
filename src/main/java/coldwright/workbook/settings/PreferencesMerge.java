package coldwright.workbook.settings;

import coldwright.workbook.entry.Merged;
import coldwright.workbook.entry.ThreeWay;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;

/** Merges the settings of two windows, key by key. */
public final class PreferencesMerge {
    private final ThreeWay way = new ThreeWay();
    private final Preferences base;
    private final Preferences mine;
    private final Preferences theirs;

    private PreferencesMerge(Preferences base, Preferences mine, Preferences theirs) {
        this.base = base;
        this.mine = mine;
        this.theirs = theirs;
    }

    /** Merges settings since their common ancestor; where both windows changed one key, mine. */
    public static Merged<Preferences> of(Preferences base, Preferences mine, Preferences theirs) {
        PreferencesMerge merge = new PreferencesMerge(base, mine, theirs);
        return new Merged<>(merge.value(), merge.way.clash());
    }

    private Preferences value() {
        Map<BenchLimit, Integer> limits = new EnumMap<>(BenchLimit.class);
        for (BenchLimit limit : BenchLimit.values()) {
            limits.put(limit, choose(all -> all.limit(limit)));
        }
        return new Preferences(
                choose(Preferences::typeSizePercent),
                choose(Preferences::theme),
                choose(Preferences::temperatureUnit),
                choose(Preferences::massUnit),
                choose(Preferences::language),
                limits,
                choose(Preferences::window),
                choose(Preferences::others));
    }

    private <T> T choose(Function<Preferences, T> key) {
        return way.choose(key.apply(base), key.apply(mine), key.apply(theirs));
    }
}
