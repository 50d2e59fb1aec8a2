package coldwright.recipe;

import coldwright.science.mix.Component;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.IngredientKind;
import coldwright.science.mix.Shelf;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Finds the ingredient that a name with its words of preparation means. Every word must belong to
 * the ingredient's name or be one of {@code preparation.txt}, so that nothing is dropped that may
 * change what it is.
 */
final class NameReader {
    private static final Pattern PERCENT =
            Pattern.compile(
                    "(?iu)(?:(?:mind(?:estens|\\.)?|at least|min\\.?|ca\\.?|with|mit|about|over) ?)*(\\d{1,3}(?:[.,]\\d{1,2})?) ?(?:%|percent|prozent)(?:ige[rsnm]?)?(?: ?(?:milk ?fat|butterfat|fat|fettgehalt|fettanteil|fett|cocoa solids|cocoa|cacao|kakaoanteil|kakao|vol\\.?|abv|alc\\.?|alkohol|i\\. ?tr\\.?|in dry matter)(?![\\p{L}]))*");

    private static final Pattern ENDING = Pattern.compile("(?iu)(\\p{L}{3,}?)(e[rsnm]?|n)");
    private static final List<String> ENDINGS = List.of("", "e", "er", "es", "en", "n");
    private static final int MOST_DROPPED = 5;
    private static final int MOST_WORDS = 12;
    private static final Set<String> PREPARATION =
            CookingUnit.lines("preparation.txt").stream()
                    .flatMap(line -> List.of(line.split(" ")).stream())
                    .collect(Collectors.toUnmodifiableSet());
    private static final Set<String> VOCABULARY = Shelf.vocabulary();

    private final Map<String, Ingredient> own;

    NameReader(Collection<Ingredient> own) {
        this.own =
                own.stream()
                        .collect(
                                Collectors.toMap(
                                        one -> one.name().toLowerCase(Locale.ROOT),
                                        Function.identity(),
                                        (a, b) -> a));
    }

    /**
     * What a name means.
     *
     * @param ingredient the ingredient; empty if no name fits
     * @param doubt a word that may change what it is, or a percentage that no name has
     * @param similar ingredients to suggest
     */
    record Found(
            Optional<Ingredient> ingredient, Optional<String> doubt, List<Ingredient> similar) {}

    /** Finds a name; what comes after a comma or in brackets is in {@code tails}. */
    Found read(String name, List<String> tails) {
        String all = String.join(" , ", tails);
        Matcher percent = PERCENT.matcher(name + " , " + all);
        String number = percent.find() ? percent.group(1) : "";
        String base = squeezed(PERCENT.matcher(name).replaceAll(" "));
        List<String> words = new ArrayList<>();
        for (String tail : tails) {
            String plain = squeezed(PERCENT.matcher(tail).replaceAll(" "));
            if (!plain.isEmpty()
                    && !plain.matches(
                            "(?iu)(?:or|oder|bzw|see|siehe|from|aus|ca|about|optional)\\b.*")) {
                words.add(plain);
            }
        }
        return number.isEmpty() ? plain(base, words) : strong(base, words, number);
    }

    private Found strong(String base, List<String> tails, String number) {
        Optional<Ingredient> exact = covered(base + " " + number + " %");
        if (exact.isEmpty()) {
            exact =
                    tails.stream()
                            .map(t -> covered(t + " " + base + " " + number + " %"))
                            .flatMap(Optional::stream)
                            .findFirst();
        }
        if (exact.isPresent()) {
            return new Found(exact, doubtIn(tails), List.of());
        }
        Found without = plain(base, tails);
        double stated = Double.parseDouble(number.replace(',', '.'));
        return without.ingredient().isEmpty()
                        || without.doubt().isPresent()
                        || near(without.ingredient().get(), stated)
                ? without
                : new Found(without.ingredient(), Optional.of(number + " %"), without.similar());
    }

    /** Whether a dairy product's own fat is what the label rounds to. */
    private static boolean near(Ingredient ingredient, double percent) {
        double fat = ingredient.composition().percent(Component.MILK_FAT);
        return ingredient.kind() == IngredientKind.DAIRY
                && Math.abs(fat - percent) <= (percent < 10 ? 0.5 : 1.5);
    }

    private Found plain(String base, List<String> tails) {
        for (String tail : tails) {
            Optional<Ingredient> turned =
                    exact(tail + " " + base).or(() -> exact(base + " " + tail));
            if (turned.isPresent()) {
                List<String> others = tails.stream().filter(one -> !one.equals(tail)).toList();
                return new Found(turned, doubtIn(others), List.of());
            }
        }
        Optional<Ingredient> found = covered(base);
        return found.isPresent()
                ? new Found(found, doubtIn(tails), List.of())
                : new Found(Optional.empty(), Optional.empty(), similar(base));
    }

    /** The first word of a tail that other names on the shelf have and preparation hasn't. */
    private static Optional<String> doubtIn(List<String> tails) {
        return tails.stream()
                .flatMap(tail -> List.of(tail.split("[^\\p{L}-]+")).stream())
                .map(word -> word.toLowerCase(Locale.ROOT))
                .filter(word -> word.length() > 2 && !PREPARATION.contains(word))
                .filter(
                        word ->
                                VOCABULARY.contains(word)
                                        || VOCABULARY.contains(word.replaceAll("s$", "")))
                .findFirst();
    }

    /** The ingredient of a name, with as few words of preparation left out as possible. */
    private Optional<Ingredient> covered(String name) {
        List<String> words = List.of(name.split(" "));
        if (words.size() > MOST_WORDS) {
            return Optional.empty();
        }
        List<Integer> droppable = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            if (PREPARATION.contains(words.get(i).toLowerCase(Locale.ROOT))) {
                droppable.add(i);
            }
        }
        int most = Math.min(MOST_DROPPED, droppable.size());
        List<Integer> masks = new ArrayList<>();
        for (int mask = 0; mask < 1 << most; mask++) {
            masks.add(mask);
        }
        masks.sort(java.util.Comparator.comparingInt(Integer::bitCount));
        for (int mask : masks) {
            List<String> left = new ArrayList<>();
            for (int i = 0; i < words.size(); i++) {
                int at = droppable.indexOf(i);
                boolean dropped = at >= 0 && (at >= MOST_DROPPED || (mask >> at & 1) == 1);
                if (!dropped) {
                    left.add(words.get(i));
                }
            }
            Optional<Ingredient> found = exact(String.join(" ", left));
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** The ingredient of a name, whatever the ending of one of its words. */
    Optional<Ingredient> exact(String name) {
        Optional<Ingredient> found = named(name);
        if (found.isPresent() || name.isBlank()) {
            return found;
        }
        String[] words = name.split(" ");
        for (int i = 0; i < words.length; i++) {
            Matcher ending = ENDING.matcher(words[i]);
            String whole = words[i];
            boolean odd = !VOCABULARY.contains(Shelf.word(whole)) && ending.matches();
            for (String other : odd ? ENDINGS : List.<String>of()) {
                words[i] = ending.group(1) + other;
                found = named(String.join(" ", words));
                if (found.isPresent()) {
                    return found;
                }
            }
            words[i] = whole;
        }
        return Optional.empty();
    }

    private Optional<Ingredient> named(String name) {
        Ingredient mine = own.get(name.strip().toLowerCase(Locale.ROOT));
        return mine == null ? Shelf.named(name) : Optional.of(mine);
    }

    /** Ingredients that some of its words name, then those of a similar name. */
    private List<Ingredient> similar(String name) {
        Set<Ingredient> all = new LinkedHashSet<>();
        String[] words = name.split(" ");
        for (int length = Math.min(4, words.length); length > 0; length--) {
            for (int i = 0; i + length <= Math.min(MOST_WORDS, words.length); i++) {
                named(String.join(" ", List.of(words).subList(i, i + length))).ifPresent(all::add);
            }
        }
        if (name.length() <= 40) {
            all.addAll(Shelf.similar(name));
        }
        return all.stream().limit(4).toList();
    }

    /** One space between words; no signs at the ends. */
    static String squeezed(String text) {
        return text.replaceAll("\\s+", " ").replaceAll("^[ ,;:.–—-]+|[ ,;:–—=-]+$", "").strip();
    }
}
