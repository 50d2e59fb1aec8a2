package coldwright.batch;

import coldwright.science.crystal.CrystalStory;
import coldwright.words.Phrase;
import coldwright.words.Worded;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Storage of a batch in its freezer.
 *
 * @param days storage time, 0 to 1000
 * @param swingC temperature variation, ± °C, once in 8 h, 0 to 10
 * @param warmed a warm spell at the end, if any
 */
public record StorageConditions(double days, double swingC, Optional<WarmSpell> warmed)
        implements Worded {
    /**
     * A time out of the freezer, such as on the way home; then it is as cold as before.
     *
     * @param temperatureC temperature it reached, °C, −40 to −0.5
     * @param hours time at that temperature, 0 to 100
     */
    public record WarmSpell(double temperatureC, double hours) {}

    /**
     * The crystals after this storage.
     *
     * @param drawn crystals at the end of freezing
     * @param freezerC the freezer's temperature, °C
     * @throws IllegalArgumentException if nearly all ice would melt during storage
     */
    CrystalStory after(CrystalStory drawn, double freezerC) {
        CrystalStory kept = drawn.storedAt(freezerC).swinging(swingC).forDays(days);
        if (warmed.isEmpty() || warmed.get().temperatureC() <= kept.temperatureC()) {
            return kept;
        }
        return kept.heatShock(warmed.get().temperatureC(), warmed.get().hours());
    }

    /** The same time at a steady temperature, never warmed. */
    StorageConditions steady() {
        return new StorageConditions(days, 0, Optional.empty());
    }

    /** Whether the temperature varied or the batch was warmed. */
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
