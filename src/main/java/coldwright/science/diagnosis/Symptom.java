package coldwright.science.diagnosis;

import coldwright.science.plan.BatchFault;

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
                    BatchFault.COARSE_CRYSTALS,
                    1.0,
                    BatchFault.STORAGE,
                    1.0,
                    BatchFault.MUCH_ICE,
                    0.5,
                    BatchFault.FEW_SOLIDS,
                    0.7,
                    BatchFault.NO_STABILISER,
                    0.4)),
    HARD(Map.of(BatchFault.MUCH_ICE, 1.0, BatchFault.FEW_SOLIDS, 0.3)),
    WILL_NOT_FREEZE(
            Map.of(
                    BatchFault.SMALL_BATH,
                    1.0,
                    BatchFault.LOW_FREEZING_POINT,
                    1.0,
                    BatchFault.LITTLE_ICE,
                    0.9)),
    TOO_SOFT(Map.of(BatchFault.LITTLE_ICE, 1.0, BatchFault.NO_STABILISER, 0.3)),
    BUTTERY(Map.of(BatchFault.MUCH_FAT, 1.0)),
    SANDY(Map.of(BatchFault.MUCH_LACTOSE, 1.0)),
    WEAK(
            Map.of(
                    BatchFault.FEW_SOLIDS,
                    1.0,
                    BatchFault.LITTLE_MSNF,
                    0.5,
                    BatchFault.NO_STABILISER,
                    0.5,
                    BatchFault.MUCH_AIR,
                    0.8)),
    GUMMY(
            Map.of(
                    BatchFault.MUCH_STABILISER,
                    1.0,
                    BatchFault.MUCH_STARCH,
                    0.8,
                    BatchFault.MANY_SOLIDS,
                    0.5)),
    TOO_SWEET(Map.of(BatchFault.MUCH_SWEETNESS, 1.0, BatchFault.MUCH_SUGARS, 0.5)),
    DULL(Map.of(BatchFault.LITTLE_SWEETNESS, 1.0, BatchFault.LITTLE_FAT, 0.4)),
    TOO_SALTY(Map.of(BatchFault.MUCH_SALT, 1.0)),
    TOO_SOUR(Map.of(BatchFault.MUCH_ACID, 1.0)),
    TOO_STRONG(Map.of(BatchFault.MUCH_ALCOHOL, 1.0)),
    POWDERY(Map.of(BatchFault.MUCH_MSNF, 1.0)),
    MELTS_FAST(
            Map.of(
                    BatchFault.LITTLE_ICE,
                    0.7,
                    BatchFault.NO_STABILISER,
                    0.6,
                    BatchFault.LITTLE_FAT,
                    0.5)),
    SHRINKS(
            Map.of(
                    BatchFault.MUCH_AIR,
                    1.0,
                    BatchFault.LITTLE_MSNF,
                    0.6,
                    BatchFault.NO_STABILISER,
                    0.3)),
    /** It doesn't suit who is to eat it. */
    OFF_DIET(Map.of(BatchFault.OFF_DIET, 1.0));

    private final Map<BatchFault, Double> causes = new EnumMap<>(BatchFault.class);

    Symptom(Map<BatchFault, Double> causes) {
        this.causes.putAll(causes);
    }

    Map<BatchFault, Double> causes() {
        return causes;
    }

    /** {@return the symptom that a fault causes most} */
    public static Symptom of(BatchFault fault) {
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
