package coldwright.science.diagnosis;

import coldwright.science.plan.Fault;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A fault of a batch, as a cook notices it, with the causes behind it and the share of each that
 * shows in it (judgement).
 */
public enum Symptom {
    ICY(
            Map.of(
                    Fault.COARSE_CRYSTALS,
                    1.0,
                    Fault.STORAGE,
                    1.0,
                    Fault.MUCH_ICE,
                    0.5,
                    Fault.FEW_SOLIDS,
                    0.7,
                    Fault.NO_STABILISER,
                    0.4)),
    HARD(Map.of(Fault.MUCH_ICE, 1.0, Fault.FEW_SOLIDS, 0.3)),
    WILL_NOT_FREEZE(
            Map.of(Fault.SMALL_BATH, 1.0, Fault.LOW_FREEZING_POINT, 1.0, Fault.LITTLE_ICE, 1.0)),
    TOO_SOFT(Map.of(Fault.LITTLE_ICE, 1.0, Fault.NO_STABILISER, 0.3)),
    BUTTERY(Map.of(Fault.MUCH_FAT, 1.0)),
    SANDY(Map.of(Fault.MUCH_LACTOSE, 1.0)),
    WEAK(
            Map.of(
                    Fault.FEW_SOLIDS,
                    1.0,
                    Fault.LITTLE_MSNF,
                    0.5,
                    Fault.NO_STABILISER,
                    0.5,
                    Fault.MUCH_AIR,
                    0.8)),
    GUMMY(Map.of(Fault.MUCH_STABILISER, 1.0, Fault.MUCH_STARCH, 0.8, Fault.MANY_SOLIDS, 0.5)),
    TOO_SWEET(Map.of(Fault.MUCH_SWEETNESS, 1.0, Fault.MUCH_SUGARS, 0.5)),
    DULL(Map.of(Fault.LITTLE_SWEETNESS, 1.0, Fault.LITTLE_FAT, 0.4)),
    TOO_SALTY(Map.of(Fault.MUCH_SALT, 1.0)),
    TOO_SOUR(Map.of(Fault.MUCH_ACID, 1.0)),
    TOO_STRONG(Map.of(Fault.MUCH_ALCOHOL, 1.0)),
    POWDERY(Map.of(Fault.MUCH_MSNF, 1.0)),
    MELTS_FAST(Map.of(Fault.LITTLE_ICE, 0.7, Fault.NO_STABILISER, 0.6, Fault.LITTLE_FAT, 0.5)),
    SHRINKS(Map.of(Fault.MUCH_AIR, 1.0, Fault.LITTLE_MSNF, 0.6, Fault.NO_STABILISER, 0.3)),
    /** It doesn't suit who is to eat it. */
    OFF_DIET(Map.of(Fault.OFF_DIET, 1.0));

    private final Map<Fault, Double> causes = new EnumMap<>(Fault.class);

    Symptom(Map<Fault, Double> causes) {
        this.causes.putAll(causes);
    }

    Map<Fault, Double> causes() {
        return causes;
    }

    /** The symptom that a fault causes most. */
    static Symptom of(Fault fault) {
        return Arrays.stream(values())
                .filter(one -> one.causes.containsKey(fault))
                .reduce((a, b) -> b.causes.get(fault) > a.causes.get(fault) ? b : a)
                .orElseThrow();
    }

    /** {@return its name in plain words, such as {@code will not freeze}} */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * Finds a symptom by its name.
     *
     * @param words such as {@code icy} or {@code will not freeze}
     * @throws IllegalArgumentException if there is none of that name
     */
    public static Symptom named(String words) {
        String plain = words.strip().toUpperCase(Locale.ROOT).replaceAll("[ -]+", "_");
        for (Symptom symptom : values()) {
            if (symptom.name().equals(plain)) {
                return symptom;
            }
        }
        throw new IllegalArgumentException(
                "\"%s\" isn't a symptom; use %s"
                        .formatted(
                                words.strip(),
                                Arrays.stream(values())
                                        .map(Symptom::words)
                                        .collect(Collectors.joining(", "))));
    }
}
