package coldwright.recipe;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A unit of a recipe, from {@code units.csv}.
 *
 * @param kind what it measures
 * @param amounts g or mL of one; two where the word means two things
 * @param name its first word in the file; of a household measure the name on the shelf
 * @param source source of the amount; empty for a definition
 */
record CookingUnit(Kind kind, List<Double> amounts, String name, String source) {
    enum Kind {
        MASS,
        VOLUME,
        MEASURE,
        /** A number in letters. */
        NUMBER
    }

    static final CookingUnit GRAM = new CookingUnit(Kind.MASS, List.of(1.0), "g", "");
    static final CookingUnit MILLILITRE = new CookingUnit(Kind.VOLUME, List.of(1.0), "ml", "");
    static final CookingUnit PIECE = new CookingUnit(Kind.MEASURE, List.of(1.0), "piece", "");
    static final CookingUnit PINCH = new CookingUnit(Kind.VOLUME, List.of(0.31), "pinch", "");

    private static final Map<String, CookingUnit> BY_WORD = read();

    /** The unit of a word, in any case. */
    static Optional<CookingUnit> of(String word) {
        return Optional.ofNullable(BY_WORD.get(word.toLowerCase(Locale.ROOT)));
    }

    /** The number of a word, in any case. */
    static Optional<CookingUnit> number(String word) {
        return of("number " + word);
    }

    boolean is(Kind one) {
        return kind == one;
    }

    private static Map<String, CookingUnit> read() {
        Map<String, CookingUnit> units = new HashMap<>();
        for (String line : lines("units.csv").subList(1, lines("units.csv").size())) {
            String[] row = line.split(",", -1);
            List<Double> amounts = Arrays.stream(row[1].split("\\|")).map(Double::valueOf).toList();
            Kind kind = Kind.valueOf(row[0].toUpperCase(Locale.ROOT));
            List<String> words = List.of(row[2].split(" "));
            CookingUnit unit = new CookingUnit(kind, amounts, words.get(0), row[3]);
            String before = kind == Kind.NUMBER ? "number " : "";
            words.forEach(word -> units.put(before + word, unit));
        }
        return Map.copyOf(units);
    }

    /** The lines of a file beside this class, without comments. */
    static List<String> lines(String resource) {
        try (InputStream in = CookingUnit.class.getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
