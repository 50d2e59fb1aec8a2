package coldwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.words.Words;

import com.fasterxml.jackson.jr.ob.JSON;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** What {@code batch --json} prints is as {@code docs/batch.schema.json} has it. */
class BatchSchemaTest {
    private static final Path SCHEMA = Path.of("docs/batch.schema.json");
    private static final Path RECIPES = Path.of("src/test/resources");

    /** All keywords that the schema may use; another one would go unchecked. */
    private static final Set<String> KEYWORDS =
            Set.of(
                    "$schema",
                    "title",
                    "description",
                    "type",
                    "const",
                    "enum",
                    "items",
                    "required",
                    "properties",
                    "additionalProperties");

    static List<Path> recipes() throws IOException {
        try (Stream<Path> all = Files.walk(RECIPES)) {
            return all.filter(file -> file.toString().endsWith(".batch")).toList();
        }
    }

    private static Map<String, Object> schema() throws IOException {
        return JSON.std.mapFrom(Files.readString(SCHEMA));
    }

    private static String json(Path file) throws IOException {
        RecipeFile recipe = RecipeFileReader.read(file, file.toString());
        return JSON.std
                .with(JSON.Feature.WRITE_NULL_PROPERTIES)
                .asString(BatchAnalysisTree.of(BatchAnalysis.of(recipe)));
    }

    @ParameterizedTest
    @MethodSource("recipes")
    void eachBatchFitsTheSchema(Path file) throws IOException {
        assertEquals(List.of(), faults(JSON.std.mapFrom(json(file)), schema(), "$"));
    }

    @Test
    void theCheckFindsWhatDoesNotFit() throws IOException {
        Map<String, Object> tree = new LinkedHashMap<>(JSON.std.mapFrom(json(recipes().get(0))));
        tree.put("mass_g", "much");
        tree.put("colour", "red");
        tree.put("method", "blender");
        tree.remove("allergens");
        assertEquals(
                Set.of(
                        "$: no allergens",
                        "$.mass_g: not number",
                        "$.method: none of [bag, tub, shaken, churn]",
                        "$: unknown colour"),
                Set.copyOf(faults(tree, schema(), "$")));
    }

    @Test
    void ingredientsAndAllergensAreData() throws IOException {
        RecipeFile recipe =
                RecipeFileReader.read(
                        "b.txt",
                        "own: house syrup = water 40, sucrose 60\n\ningredient,grams\nwhole milk,\"0,5 l\"\nsucrose,4 oz\nhouse syrup,30\n");
        Map<String, Object> tree = BatchAnalysisTree.of(BatchAnalysis.of(recipe));
        Map<?, ?> sugar = (Map<?, ?>) ((List<?>) tree.get("ingredients")).get(1);
        assertEquals("4 oz sucrose", sugar.get("as_written"));
        assertEquals(113.398, (double) sugar.get("grams"), 1e-3);
        assertEquals(List.of("milk"), tree.get("allergens"));
        assertEquals(List.of("house syrup"), tree.get("allergens_not_known_of"));
        Map<?, ?> milk = (Map<?, ?>) ((List<?>) tree.get("ingredients")).get(0);
        assertTrue((double) milk.get("grams") > 510 && (double) milk.get("grams") < 520);
        assertFalse(milk.get("source").toString().isEmpty(), "a volume has the density's source");
    }

    @ParameterizedTest
    @ValueSource(strings = {"batches/sorbet.batch", "recipes/06-american-coconut-lime.txt"})
    void jsonIsTheSameUnderAnyLocale(String name) throws IOException {
        Path file = RECIPES.resolve(name);
        String usual = json(file);
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            Words.show(Locale.GERMAN);
            assertEquals(usual, json(file));
            RecipeFile read = RecipeFileReader.read(file, file.toString());
            assertFalse(
                    RecipeFileWriter.text(read.recipe().times(1.37), BatchLineage.NONE)
                            .matches("(?s).*[\u0660-\u0669\u066b].*"));
        } finally {
            Words.show(Locale.ENGLISH);
            Locale.setDefault(before);
        }
    }

    private static List<String> faults(Object value, Map<?, ?> schema, String at) {
        assertTrue(KEYWORDS.containsAll(schema.keySet()), at + ": " + schema.keySet());
        List<String> faults = new ArrayList<>();
        if (schema.containsKey("const") && !schema.get("const").equals(value)) {
            faults.add(at + ": not " + schema.get("const"));
        }
        if (schema.get("enum") instanceof List<?> all && !all.contains(value)) {
            faults.add(at + ": none of " + all);
        }
        if (schema.containsKey("type")) {
            Object type = schema.get("type");
            List<?> types = type instanceof List<?> all ? all : List.of(type);
            if (types.stream().noneMatch(one -> is(value, (String) one))) {
                faults.add(at + ": not " + type);
            }
        }
        if (value instanceof List<?> list && schema.get("items") instanceof Map<?, ?> items) {
            for (int i = 0; i < list.size(); i++) {
                faults.addAll(faults(list.get(i), items, at + "[" + i + "]"));
            }
        }
        if (value instanceof Map<?, ?> map) {
            if (schema.get("required") instanceof List<?> required) {
                required.stream()
                        .filter(key -> !map.containsKey(key))
                        .forEach(key -> faults.add(at + ": no " + key));
            }
            map.forEach((key, one) -> faults.addAll(member(key, one, schema, at)));
        }
        return faults;
    }

    private static List<String> member(Object key, Object value, Map<?, ?> schema, String at) {
        if (schema.get("properties") instanceof Map<?, ?> all && all.containsKey(key)) {
            return faults(value, (Map<?, ?>) all.get(key), at + "." + key);
        }
        return schema.get("additionalProperties") instanceof Map<?, ?> any
                ? faults(value, any, at + "." + key)
                : List.of(at + ": unknown " + key);
    }

    private static boolean is(Object value, String type) {
        return switch (type) {
            case "null" -> value == null;
            case "string" -> value instanceof String;
            case "number" -> value instanceof Number;
            case "boolean" -> value instanceof Boolean;
            case "array" -> value instanceof List;
            case "object" -> value instanceof Map;
            default -> throw new AssertionError(type);
        };
    }
}
