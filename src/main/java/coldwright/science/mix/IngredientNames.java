package coldwright.science.mix;

import coldwright.text.NearestWord;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Finds an ingredient by a name as a cook writes it, or suggests the nearest ones. */
final class IngredientNames {
    private static final int SUGGESTIONS = 3;

    /** Edit distance beyond which names differ: saccharose is no mascarpone. */
    private static final double FARTHEST = 0.4;

    private final Map<String, Ingredient> byKey = new LinkedHashMap<>();

    IngredientNames(Collection<Ingredient> ingredients) {
        for (Ingredient ingredient : ingredients) {
            put(ingredient.name(), ingredient);
        }
        for (Ingredient ingredient : ingredients) {
            ingredient.aliases().forEach(alias -> put(alias, ingredient));
        }
    }

    private void put(String name, Ingredient ingredient) {
        Ingredient before = byKey.putIfAbsent(key(name), ingredient);
        if (before != null && !before.equals(ingredient)) {
            throw new IllegalStateException(
                    "\"%s\" names both %s and %s".formatted(name, before, ingredient));
        }
    }

    Ingredient find(String name) {
        Ingredient found = byKey.get(key(name));
        if (found != null) {
            return found;
        }
        List<String> near = nearest(key(name));
        throw new IllegalArgumentException(
                near.isEmpty()
                        ? "\"%s\" is not on the shelf: state it as an own ingredient"
                                .formatted(name.strip())
                        : "\"%s\" is not on the shelf; nearest is %s. Fix the name or state it as an own ingredient."
                                .formatted(name.strip(), String.join(", ", near)));
    }

    private List<String> nearest(String key) {
        Map<Ingredient, Double> distances = new LinkedHashMap<>();
        byKey.forEach(
                (other, ingredient) ->
                        distances.merge(ingredient, distance(key, other), Math::min));
        return distances.entrySet().stream()
                .filter(entry -> entry.getValue() <= FARTHEST)
                .sorted(Map.Entry.comparingByValue(Comparator.naturalOrder()))
                .limit(SUGGESTIONS)
                .map(entry -> entry.getKey().name())
                .toList();
    }

    /** Lower case, no accents, hyphens or plurals; numbers last, so that "40 % rum" is "rum 40". */
    static String key(String name) {
        String plain =
                Normalizer.normalize(name, Normalizer.Form.NFD)
                        .replaceAll("\\p{M}", "")
                        .toLowerCase(Locale.ROOT)
                        .replaceAll("['’]", "")
                        .replaceAll("(?<=\\d),(?=\\d)", ".")
                        .replaceAll("[^a-z0-9.]+", " ")
                        .strip();
        List<String> words = new ArrayList<>();
        List<String> numbers = new ArrayList<>();
        for (String word : plain.split(" ", -1)) {
            if (word.matches("[0-9.]+")) {
                numbers.add(word.replaceAll("(?<=\\.\\d{0,9})0+$|\\.0*$", ""));
            } else {
                words.add(singular(word));
            }
        }
        words.addAll(numbers);
        return String.join(" ", words);
    }

    private static String singular(String word) {
        if (word.endsWith("ies") && word.length() > 4) {
            return word.substring(0, word.length() - 3) + "y";
        }
        if (word.matches(".*(ch|sh|ss|x|o)es")) {
            return word.substring(0, word.length() - 2);
        }
        return word.endsWith("s") && !word.endsWith("ss") && word.length() > 3
                ? word.substring(0, word.length() - 1)
                : word;
    }

    /** Edit distance over the longer length, less where whole words agree. */
    private static double distance(String a, String b) {
        double letters =
                NearestWord.typos(a, b) / (double) Math.max(1, Math.max(a.length(), b.length()));
        Set<String> shared = new java.util.HashSet<>(List.of(a.split(" ")));
        Set<String> others = Set.copyOf(java.util.Arrays.asList(b.split(" ")));
        int all = Math.max(shared.size(), others.size());
        shared.retainAll(others);
        return letters * (1 - 0.4 * shared.size() / all);
    }
}
