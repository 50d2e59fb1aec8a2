package coldwright.science.mix;

import coldwright.science.Require;
import coldwright.text.NearestWord;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Finds an ingredient by a name as a cook writes it, or suggests the nearest ones. */
final class IngredientNames {
    private static final int SUGGESTIONS = 3;

    /** Edit distance beyond which names differ: saccharose is no mascarpone. */
    private static final double FARTHEST = 0.4;

    /** Part of the distance that shared words take away. */
    private static final double SHARED_WORDS = 0.4;

    /** Accents and apostrophes. */
    private static final Pattern MARKS = Pattern.compile("[\\p{M}'’]");

    private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d)");
    private static final Pattern OTHER_SIGNS = Pattern.compile("[^a-z0-9.]+");
    private static final Pattern PLURAL_ES = Pattern.compile(".*(ch|sh|ss|x|o)es");

    private final Map<String, Ingredient> byKey = new LinkedHashMap<>();
    private final List<Map.Entry<Key, Ingredient>> keys;

    IngredientNames(Collection<Ingredient> ingredients) {
        for (Ingredient ingredient : ingredients) {
            put(ingredient.name(), ingredient);
        }
        for (Ingredient ingredient : ingredients) {
            for (String alias : ingredient.aliases()) {
                put(alias, ingredient);
                put(withoutUmlauts(alias), ingredient);
            }
        }
        keys =
                byKey.entrySet().stream()
                        .map(one -> Map.entry(Key.of(one.getKey()), one.getValue()))
                        .toList();
    }

    /** As typed on a keyboard without umlauts: {@code Haselnuesse}. */
    private static String withoutUmlauts(String name) {
        return name.replaceAll("[äÄ]", "ae").replaceAll("[öÖ]", "oe").replaceAll("[üÜ]", "ue");
    }

    private void put(String name, Ingredient ingredient) {
        Ingredient before = byKey.putIfAbsent(key(name), ingredient);
        if (before != null && !before.equals(ingredient)) {
            throw new IllegalStateException(
                    "\"%s\" names both %s and %s".formatted(name, before, ingredient));
        }
    }

    Optional<Ingredient> named(String name) {
        return Optional.ofNullable(byKey.get(key(name)));
    }

    Ingredient find(String name) {
        return named(name)
                .orElseThrow(
                        () -> {
                            List<Ingredient> near = nearest(name);
                            String key = near.isEmpty() ? "fault.not-on-shelf" : "fault.nearest";
                            return Require.fault(
                                    "science.mix",
                                    key,
                                    name.strip(),
                                    near.stream().map(Ingredient::phrase).toList());
                        });
    }

    /** Words of all names. */
    Set<String> words() {
        return byKey.keySet().stream()
                .flatMap(key -> Arrays.stream(key.split(" ")))
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Up to three ingredients of a similar name, the most similar first. */
    List<Ingredient> nearest(String name) {
        Key key = Key.of(key(name));
        Set<String> words = Set.copyOf(key.words);
        Map<Ingredient, Double> distances = new LinkedHashMap<>();
        for (Map.Entry<Key, Ingredient> other : keys) {
            double distance = distance(key, words, other.getKey());
            if (distance <= FARTHEST) {
                distances.merge(other.getValue(), distance, Math::min);
            }
        }
        return distances.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(Comparator.naturalOrder()))
                .limit(SUGGESTIONS)
                .map(Map.Entry::getKey)
                .toList();
    }

    /** A name's key with its words and how often it has each letter. */
    private record Key(String text, List<String> words, int[] letters) {
        static Key of(String text) {
            int[] letters = new int[32];
            text.chars().forEach(c -> letters[c % letters.length]++);
            return new Key(text, List.of(text.split(" ")), letters);
        }

        /** A number of typing errors that isn't more than there are. */
        int leastTypos(Key other) {
            int more = 0;
            int fewer = 0;
            for (int i = 0; i < letters.length; i++) {
                int difference = letters[i] - other.letters[i];
                more += Math.max(0, difference);
                fewer += Math.max(0, -difference);
            }
            return Math.max(more, fewer);
        }
    }

    /** Lower case, no accents, hyphens or plurals; numbers last, so that "40 % rum" is "rum 40". */
    static String key(String name) {
        String letters =
                Normalizer.normalize(name, Normalizer.Form.NFD)
                        .toLowerCase(Locale.ROOT)
                        .replace("ß", "ss");
        String plain =
                OTHER_SIGNS
                        .matcher(
                                DECIMAL_COMMA
                                        .matcher(MARKS.matcher(letters).replaceAll(""))
                                        .replaceAll("."))
                        .replaceAll(" ")
                        .strip();
        List<String> words = new ArrayList<>();
        List<String> numbers = new ArrayList<>();
        for (String word : plain.split(" ", -1)) {
            if (!word.isEmpty() && word.charAt(0) <= '9') {
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
        if (word.endsWith("es") && PLURAL_ES.matcher(word).matches()) {
            return word.substring(0, word.length() - 2);
        }
        return word.endsWith("s") && !word.endsWith("ss") && word.length() > 3
                ? word.substring(0, word.length() - 1)
                : word;
    }

    /** Edit distance over the longer length, less where whole words agree; 1 if it is far. */
    private static double distance(Key a, Set<String> words, Key b) {
        int longer = Math.max(1, Math.max(a.text.length(), b.text.length()));
        int least = a.leastTypos(b);
        if (least * (1 - SHARED_WORDS) > FARTHEST * longer) {
            return 1;
        }
        long shared = b.words.stream().filter(words::contains).count();
        double factor = 1 - SHARED_WORDS * shared / Math.max(words.size(), b.words.size());
        return least * factor > FARTHEST * longer
                ? 1
                : NearestWord.typos(a.text, b.text) * factor / longer;
    }
}
