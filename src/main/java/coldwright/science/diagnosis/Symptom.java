package coldwright.science.diagnosis;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** A fault of a batch, as a cook notices it. */
public enum Symptom {
    ICY,
    HARD,
    WILL_NOT_FREEZE,
    TOO_SOFT,
    BUTTERY,
    SANDY,
    WEAK,
    GUMMY,
    TOO_SWEET,
    MELTS_FAST,
    SHRINKS;

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
