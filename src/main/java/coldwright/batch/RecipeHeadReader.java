package coldwright.batch;

import coldwright.science.Temperature;
import coldwright.science.balance.Target;
import coldwright.science.balance.Trait;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.OwnIngredient;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The {@code key: value} lines of a batch file, one after the other. */
final class RecipeHeadReader {
    private static final List<String> KEYS =
            List.of("name", "method", "bath", "freezer", "air", "stored", "own", "target", "total");

    private final String file;
    private final Map<String, Integer> seen = new HashMap<>();

    String name = "";
    RecipeFile.Method method = RecipeFile.Method.TUB;
    Optional<BathSetup> bath = Optional.empty();
    double freezerC = Temperature.HOME_FREEZER_C;
    double airPercent;
    Optional<StorageConditions> stored = Optional.empty();
    OptionalDouble totalG = OptionalDouble.empty();
    final List<Target> targets = new ArrayList<>();
    final Map<String, Ingredient> own = new HashMap<>();

    RecipeHeadReader(String file) {
        this.file = file;
    }

    void read(int line, String text) throws BatchFileException {
        int colon = text.indexOf(':');
        if (colon < 1) {
            throw new BatchFileException(
                    file,
                    line,
                    "\"%s\" is no line of a head; write it as key: value, and leave a line empty before the table"
                            .formatted(shortened(text)));
        }
        String key = text.substring(0, colon).strip().toLowerCase(Locale.ROOT);
        String value = text.substring(colon + 1).strip();
        if (!KEYS.contains(key)) {
            throw new BatchFileException(
                    file,
                    line,
                    "there is no key \"%s\"; the keys are %s"
                            .formatted(shortened(key), String.join(", ", KEYS)));
        }
        Integer before = seen.put(key, line);
        if (before != null && !key.equals("own") && !key.equals("target")) {
            throw new BatchFileException(
                    file,
                    line,
                    "%s stands on line %d already; keep one of the two".formatted(key, before));
        }
        if (value.isEmpty()) {
            throw new BatchFileException(
                    file, line, key + " has no value; write one or take the line out");
        }
        try {
            take(key, value);
        } catch (IllegalArgumentException e) {
            throw new BatchFileException(file, line, e.getMessage());
        }
    }

    private void take(String key, String value) {
        switch (key) {
            case "name" -> name = value;
            case "method" -> method = methodOf(value);
            case "bath" -> bath = Optional.of(bathOf(value));
            case "freezer" -> freezerC = TypedQuantity.of("freezer", value).celsius(-60, 0);
            case "air" -> airPercent = TypedQuantity.of("air", value).percent(0, 200);
            case "stored" -> stored = Optional.of(StorageConditions.of(value));
            case "total" -> totalG = OptionalDouble.of(TypedQuantity.of("total", value).grams());
            case "target" -> targetsOf(value);
            case "own" -> ownOf(value);
            default -> throw new AssertionError(key);
        }
    }

    private static RecipeFile.Method methodOf(String value) {
        return switch (value.toLowerCase(Locale.ROOT)) {
            case "bag" -> RecipeFile.Method.BAG;
            case "tub", "still tub" -> RecipeFile.Method.TUB;
            case "shaken", "shaken tub" -> RecipeFile.Method.SHAKEN;
            case "churn", "machine" -> RecipeFile.Method.CHURN;
            default ->
                    throw new IllegalArgumentException(
                            "there is no method \"%s\"; the methods are bag, tub, shaken and churn"
                                    .formatted(value));
        };
    }

    private static BathSetup bathOf(String value) {
        double iceG = Double.NaN;
        double saltG = 0;
        for (String part : value.split(",", -1)) {
            String words = part.strip().toLowerCase(Locale.ROOT);
            if (words.startsWith("ice ")) {
                iceG = TypedQuantity.of("ice", words.substring(4)).grams();
            } else if (words.startsWith("salt ")) {
                saltG = TypedQuantity.of("salt", words.substring(5)).grams();
            } else {
                throw new IllegalArgumentException(
                        "the bath names \"%s\"; write it as: bath: ice 2000 g, salt 500 g"
                                .formatted(part.strip()));
            }
        }
        if (!(iceG > 0)) {
            throw new IllegalArgumentException(
                    "the bath has no ice; write it as: bath: ice 2000 g, salt 500 g");
        }
        if (saltG == 0) {
            throw new IllegalArgumentException(
                    "the bath has no salt, and ice alone stands at 0 °C, where no mix freezes; add about a quarter of the ice's weight in salt");
        }
        return new BathSetup(iceG, saltG);
    }

    private void targetsOf(String value) {
        for (String part : value.split(",", -1)) {
            String words = part.strip();
            int cut = firstOfValue(words);
            String trait = words.substring(0, cut).strip();
            TypedQuantity amount =
                    TypedQuantity.of(trait.isEmpty() ? "target" : trait, words.substring(cut));
            targets.add(new Target(Trait.named(trait), amount.value()));
        }
    }

    /** Where the value begins: the last number of the part, so that "ice at -18 °C 70 %" works. */
    private static int firstOfValue(String words) {
        int cut = words.length();
        while (cut > 0 && !Character.isDigit(words.charAt(cut - 1))) {
            cut--;
        }
        while (cut > 0 && "0123456789.+-−".indexOf(words.charAt(cut - 1)) >= 0) {
            cut--;
        }
        if (cut == 0 || cut == words.length()) {
            throw new IllegalArgumentException(
                    "\"%s\" is no target; write a name and a number, as in: target: fat 14 %%, sucrose 15 %%"
                            .formatted(words));
        }
        return cut;
    }

    private void ownOf(String value) {
        int equals = value.indexOf('=');
        if (equals < 1) {
            throw new IllegalArgumentException(
                    "own needs a name, = and its parts, as in: own: house syrup = water 40, sucrose 60");
        }
        String ownName = value.substring(0, equals).strip();
        Ingredient ingredient = OwnIngredient.of(ownName, value.substring(equals + 1).strip());
        if (own.put(ownName.toLowerCase(Locale.ROOT), ingredient) != null) {
            throw new IllegalArgumentException(
                    "own ingredient \"%s\" is described twice; keep one of the two"
                            .formatted(ownName));
        }
    }

    static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, 57) + "…";
    }
}
