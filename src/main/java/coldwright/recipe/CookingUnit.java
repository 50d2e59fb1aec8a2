package coldwright.recipe;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
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
        MEASURE
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

    boolean is(Kind one) {
        return kind == one;
    }

    private static Map<String, CookingUnit> read() {
        CSVFormat format =
                CSVFormat.DEFAULT
                        .builder()
                        .setCommentMarker('#')
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get();
        Map<String, CookingUnit> units = new HashMap<>();
        try (InputStream in = CookingUnit.class.getResourceAsStream("units.csv");
                Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            for (CSVRecord row : format.parse(reader)) {
                List<String> words = List.of(row.get("words").split(" "));
                List<Double> amounts =
                        Arrays.stream(row.get("amount").split("\\|")).map(Double::valueOf).toList();
                CookingUnit unit =
                        new CookingUnit(
                                Kind.valueOf(row.get("kind").toUpperCase(Locale.ROOT)),
                                amounts,
                                words.get(0),
                                row.get("source"));
                words.forEach(word -> units.put(word, unit));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Map.copyOf(units);
    }
}
