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
            share(BatchFault.COARSE_CRYSTALS, 1),
            share(BatchFault.STORAGE, 1),
            share(BatchFault.MUCH_ICE, 0.5),
            share(BatchFault.FEW_SOLIDS, 0.7),
            share(BatchFault.NO_STABILISER, 0.4)),
    HARD(share(BatchFault.MUCH_ICE, 1), share(BatchFault.FEW_SOLIDS, 0.3)),
    WILL_NOT_FREEZE(
            share(BatchFault.SMALL_BATH, 1),
            share(BatchFault.LOW_FREEZING_POINT, 1),
            share(BatchFault.LITTLE_ICE, 0.9)),
    TOO_SOFT(share(BatchFault.LITTLE_ICE, 1), share(BatchFault.NO_STABILISER, 0.3)),
    BUTTERY(share(BatchFault.MUCH_FAT, 1)),
    SANDY(share(BatchFault.MUCH_LACTOSE, 1)),
    WEAK(
            share(BatchFault.FEW_SOLIDS, 1),
            share(BatchFault.LITTLE_MSNF, 0.5),
            share(BatchFault.NO_STABILISER, 0.5),
            share(BatchFault.MUCH_AIR, 0.8)),
    GUMMY(
            share(BatchFault.MUCH_STABILISER, 1),
            share(BatchFault.MUCH_STARCH, 0.8),
            share(BatchFault.MANY_SOLIDS, 0.5)),
    TOO_SWEET(share(BatchFault.MUCH_SWEETNESS, 1), share(BatchFault.MUCH_SUGARS, 0.5)),
    DULL(share(BatchFault.LITTLE_SWEETNESS, 1), share(BatchFault.LITTLE_FAT, 0.4)),
    TOO_SALTY(share(BatchFault.MUCH_SALT, 1)),
    TOO_SOUR(share(BatchFault.MUCH_ACID, 1)),
    TOO_STRONG(share(BatchFault.MUCH_ALCOHOL, 1)),
    POWDERY(share(BatchFault.MUCH_MSNF, 1)),
    MELTS_FAST(
            share(BatchFault.LITTLE_ICE, 0.7),
            share(BatchFault.NO_STABILISER, 0.6),
            share(BatchFault.LITTLE_FAT, 0.5)),
    SHRINKS(
            share(BatchFault.MUCH_AIR, 1),
            share(BatchFault.LITTLE_MSNF, 0.6),
            share(BatchFault.NO_STABILISER, 0.3)),
    /** It doesn't suit who is to eat it. */
    OFF_DIET(share(BatchFault.OFF_DIET, 1));

    private final Map<BatchFault, Double> causes = new EnumMap<>(BatchFault.class);

    /** A cause, and the part of it that shows. */
    private record Share(BatchFault fault, double part) {}

    Symptom(Share... causes) {
        for (Share one : causes) {
            this.causes.put(one.fault(), one.part());
        }
    }

    private static Share share(BatchFault fault, double part) {
        return new Share(fault, part);
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
