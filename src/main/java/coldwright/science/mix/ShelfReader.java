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
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads the built-in ingredients, a file for each kind; an invalid row is a bug in the program.
 * {@code shelf/README.md} describes the columns.
 */
final class ShelfReader {
    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT
                    .builder()
                    .setCommentMarker('#')
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get();

    /** A measure such as {@code piece 50} or {@code can 400 mL (common practice, no source)}. */
    private static final Pattern MEASURE =
            Pattern.compile("(\\p{L}[\\p{L} ]*) ([0-9.]+)( mL)?(?: \\(([^)]*)\\))?(?:; |$)");

    private ShelfReader() {}

    static Map<String, Ingredient> read() {
        Map<String, Ingredient> rows = new LinkedHashMap<>();
        for (IngredientKind kind : IngredientKind.values()) {
            if (kind != IngredientKind.OWN) {
                read(kind, rows);
            }
        }
        return Collections.unmodifiableMap(rows);
    }

    private static void read(IngredientKind kind, Map<String, Ingredient> rows) {
        try (InputStream in = ShelfReader.class.getResourceAsStream(kind.resource());
                Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            for (CSVRecord row : FORMAT.parse(reader)) {
                Ingredient ingredient = ingredient(kind, row);
                if (rows.put(ingredient.name(), ingredient) != null) {
                    throw new IllegalStateException("%s is on the shelf twice".formatted(row));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Ingredient ingredient(IngredientKind kind, CSVRecord row) {
        Composition composition = Composition.NOTHING;
        for (String part : list(row.get("parts"))) {
            composition = composition.with(number(part), component(words(part)));
        }
        for (String beside : list(row.get("beside"))) {
            composition = composition.with(number(beside), tally(words(beside)));
        }
        String density = row.get("density_kg_per_l");
        String source = (row.get("source") + " " + row.get("ndb")).strip();
        return new Ingredient(
                row.get("name"),
                list(row.get("aliases")),
                composition,
                density.isEmpty()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(Double.parseDouble(density)),
                allergens(row.get("allergens")),
                source,
                row.get("inferred"),
                kind,
                Diet.valueOf(row.get("diet").toUpperCase(Locale.ROOT)),
                MEASURE.matcher(row.get("measures"))
                        .results()
                        .map(found -> measure(found, source))
                        .toList());
    }

    private static HouseholdMeasure measure(MatchResult found, String source) {
        return new HouseholdMeasure(
                found.group(1),
                Double.parseDouble(found.group(2)),
                found.group(3) != null,
                found.group(4) == null ? source : found.group(4));
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
