package coldwright.science.mix;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads the built-in ingredient file; an invalid row is a bug in the program. */
final class ShelfReader {
    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT
                    .builder()
                    .setCommentMarker('#')
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get();

    private ShelfReader() {}

    static Map<String, Ingredient> read(String resource) {
        try (InputStream in = ShelfReader.class.getResourceAsStream(resource);
                Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            Map<String, Ingredient> rows = new LinkedHashMap<>();
            for (CSVRecord row : FORMAT.parse(reader)) {
                Ingredient ingredient = ingredient(row);
                if (rows.put(ingredient.name(), ingredient) != null) {
                    throw new IllegalStateException("%s is on the shelf twice".formatted(row));
                }
            }
            return Collections.unmodifiableMap(rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Ingredient ingredient(CSVRecord row) {
        Composition composition = Composition.NOTHING;
        for (String part : list(row.get("parts"))) {
            composition = composition.with(number(part), component(words(part)));
        }
        for (String beside : list(row.get("beside"))) {
            composition = composition.with(number(beside), tally(words(beside)));
        }
        String density = row.get("density_kg_per_l");
        return new Ingredient(
                row.get("name"),
                list(row.get("aliases")),
                composition,
                density.isEmpty()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(Double.parseDouble(density)),
                allergens(row.get("allergens")),
                (row.get("source") + " " + row.get("ndb")).strip(),
                row.get("inferred"));
    }

    private static List<String> list(String text) {
        return text.isBlank() ? List.of() : Arrays.asList(text.split("; *"));
    }

    private static double number(String entry) {
        return Double.parseDouble(entry.substring(entry.lastIndexOf(' ') + 1));
    }

    private static String words(String entry) {
        return entry.substring(0, entry.lastIndexOf(' '));
    }

    private static Component component(String words) {
        return Component.valueOf(words.toUpperCase(Locale.ROOT).replace(' ', '_'));
    }

    private static Tally tally(String words) {
        return switch (words) {
            case "ions" -> Tally.IONS_MMOL;
            case "higher saccharides" -> Tally.HIGHER_SACCHARIDES_MMOL;
            default -> Tally.valueOf(words.toUpperCase(Locale.ROOT).replace(' ', '_'));
        };
    }

    private static Set<Allergen> allergens(String text) {
        return list(text).stream()
                .map(word -> Allergen.valueOf(word.toUpperCase(Locale.ROOT).replace(' ', '_')))
                .collect(Collectors.toSet());
    }
}
