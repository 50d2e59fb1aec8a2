package coldwright.science.standards;

import coldwright.science.Rounded;
import coldwright.science.mix.Component;
import coldwright.science.mix.Mix;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.List;

/** Collects the shortfalls of a mix for a name, with figures. */
final class NameShortfalls {
    /** Tolerance for rounding, so that a mix made to the limit meets it. */
    private static final double ROUNDING = 1e-9;

    /** An ingredient with more other fat than this is a fat, not a flavouring. */
    private static final double A_FAT_PERCENT = 90;

    private final List<Phrase> found = new ArrayList<>();

    NameShortfalls atLeast(String what, double percent, double least) {
        return atLeast(what, percent, least, "%");
    }

    NameShortfalls atLeastPounds(String what, double pounds, double least) {
        return atLeast(what, pounds, least, "lb");
    }

    private NameShortfalls atLeast(String what, double value, double least, String unit) {
        if (value < least - ROUNDING) {
            found.add(describe(what, value, "at-least", least, unit));
        }
        return this;
    }

    NameShortfalls below(String what, double percent, double limit) {
        if (percent >= limit - ROUNDING) {
            found.add(describe(what, percent, "below", limit, "%"));
        }
        return this;
    }

    private static Phrase describe(
            String what, double value, String side, double limit, String unit) {
        return Phrase.of(
                LocalRules.AREA,
                side,
                part(what),
                Rounded.hundredth(value),
                unit,
                Rounded.hundredth(limit));
    }

    private static Phrase part(String what) {
        return Phrase.of(LocalRules.AREA, "part." + what);
    }

    NameShortfalls without(boolean present, String what) {
        if (present) {
            found.add(Phrase.of(LocalRules.AREA, "without", part(what)));
        }
        return this;
    }

    NameShortfalls with(boolean present, String what) {
        if (!present) {
            found.add(Phrase.of(LocalRules.AREA, "with", part(what)));
        }
        return this;
    }

    NameVerdict verdict(String place, String name, Phrase rule) {
        return new NameVerdict(place, name, found, rule);
    }

    static boolean hasAddedFat(Mix mix) {
        return mix.amounts().stream()
                .anyMatch(
                        a ->
                                a.massG() > 0
                                        && a.ingredient().composition().percent(Component.OTHER_FAT)
                                                > A_FAT_PERCENT);
    }
}
