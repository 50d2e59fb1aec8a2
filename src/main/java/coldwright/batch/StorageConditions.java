package coldwright.batch;

import coldwright.science.Require;
import coldwright.science.crystal.CrystalStory;
import coldwright.words.Phrase;
import coldwright.words.Worded;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a batch was kept in its freezer.
 *
 * @param days how long, 0 to 1000
 * @param swingC how far the freezer swings up and down, once in 8 h, °C, 0 to 10
 * @param warmed one time out of the cold at the end of it, if there was one
 */
public record StorageConditions(double days, double swingC, Optional<WarmSpell> warmed)
        implements Worded {
    private static final Require.Range DAYS = new Require.Range(0, 1000, "d");
    private static final Require.Range SWING = new Require.Range(0, 10, "°C");
    private static final Require.Range HOURS = new Require.Range(0, 100, "h");
    private static final double WARMEST_C = -0.5;
    private static final double COLDEST_C = -40;
    private static final String FORM =
            "write it as: stored: 7 days, swinging 3 °C, warmed to -6 °C for 2 h";

    /**
     * A time out of the cold, such as on the way home; then it is as cold as before.
     *
     * @param temperatureC how warm the batch became, °C, −40 to −0.5
     * @param hours how long it was so warm, 0 to 100
     */
    public record WarmSpell(double temperatureC, double hours) {
        public WarmSpell {
            Require.within("warmed", temperatureC, new Require.Range(COLDEST_C, WARMEST_C, "°C"));
            Require.within("warmed for", hours, HOURS);
        }
    }

    public StorageConditions {
        Require.within("stored", days, DAYS);
        Require.within("swinging", swingC, SWING);
    }

    /**
     * Reads it as a batch file states it.
     *
     * @param value such as {@code 7 days, swinging 3 °C, warmed to -6 °C for 2 h}; only the days
     *     must stand there
     * @return how it was kept
     * @throws IllegalArgumentException if it can't be understood, in one sentence
     */
    static StorageConditions of(String value) {
        double days = Double.NaN;
        double swingC = 0;
        Optional<WarmSpell> warmed = Optional.empty();
        for (String part : value.split(",", -1)) {
            String words = part.strip().toLowerCase(java.util.Locale.ROOT);
            if (words.startsWith("swinging ")) {
                swingC = TypedQuantity.of("swinging", words.substring(9)).degrees();
            } else if (words.matches("warmed to .+ for .+")) {
                int cut = words.lastIndexOf(" for ");
                warmed =
                        Optional.of(
                                new WarmSpell(
                                        TypedQuantity.of("warmed", words.substring(10, cut))
                                                .celsius(COLDEST_C, WARMEST_C),
                                        TypedQuantity.of("warmed for", words.substring(cut + 5))
                                                .hours()));
            } else if (words.matches("[+-]?[0-9.].*")) {
                days = TypedQuantity.of("stored", words).days();
            } else {
                throw new IllegalArgumentException(
                        "stored says \"%s\"; %s"
                                .formatted(RecipeHeadReader.shortened(part.strip()), FORM));
            }
        }
        if (Double.isNaN(days)) {
            throw new IllegalArgumentException("stored says no days; " + FORM);
        }
        return new StorageConditions(days, swingC, warmed);
    }

    /**
     * What became of the crystals.
     *
     * @param drawn the batch at the end of freezing
     * @param freezerC the freezer, °C
     * @return the batch after it was kept so
     * @throws IllegalArgumentException if nearly all ice would melt on the way
     */
    CrystalStory after(CrystalStory drawn, double freezerC) {
        CrystalStory kept = drawn.storedAt(freezerC).swinging(swingC).forDays(days);
        if (warmed.isEmpty() || warmed.get().temperatureC() <= kept.temperatureC()) {
            return kept;
        }
        return kept.heatShock(warmed.get().temperatureC(), warmed.get().hours());
    }

    /** As long in a freezer that does not swing, and never out of it. */
    StorageConditions steady() {
        return new StorageConditions(days, 0, Optional.empty());
    }

    /**
     * Whether it was anything but steady.
     *
     * @return true if the freezer swings or the batch was warmed
     */
    public boolean disturbed() {
        return swingC > 0 || warmed.isPresent();
    }

    @Override
    public Phrase phrase() {
        List<Phrase> parts = new ArrayList<>();
        parts.add(part(days == 1 ? "day" : "days", days));
        if (swingC > 0) {
            parts.add(part("varying", swingC));
        }
        warmed.ifPresent(one -> parts.add(part("warmed", one.temperatureC(), one.hours())));
        return part("parts", parts);
    }

    private static Phrase part(String key, Object... values) {
        return Phrase.of("batch", "stored." + key, values);
    }
}
