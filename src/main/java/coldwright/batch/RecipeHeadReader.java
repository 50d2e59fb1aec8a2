package coldwright.batch;

import coldwright.science.balance.Target;
import coldwright.science.balance.Trait;
import coldwright.science.mix.Ingredient;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads the {@code key: value} lines of a recipe file. */
final class RecipeHeadReader {
    private static final List<String> KEYS =
            List.of(
                    "name", "style", "diet", "method", "bath", "freezer", "air", "serving",
                    "stored", "own", "target", "total");

    private final String file;
    private final Map<String, Integer> seen = new HashMap<>();

    String name = "";
    FreezingSetup setup = FreezingSetup.TUB;
    RecipeIntent intent = RecipeIntent.NONE;
    Typed<RecipeTotal> total = Typed.nothing();
    final List<Typed<List<Target>>> goals = new ArrayList<>();
    final Map<String, Typed<Ingredient>> own = new LinkedHashMap<>();

    RecipeHeadReader(String file) {
        this.file = file;
    }

    void read(int line, String text) {
        int colon = text.indexOf(':');
        if (colon < 1) {
            throw fault(line, "head.line", shortened(text));
        }
        String key = text.substring(0, colon).strip().toLowerCase(Locale.ROOT);
        String value = text.substring(colon + 1).strip();
        if (!KEYS.contains(key)) {
            throw fault(line, "head.key", shortened(key), KEYS);
        }
        Integer before = seen.put(key, line);
        if (before != null && !key.equals("own") && !key.equals("target")) {
            throw fault(line, "head.twice", key, before);
        }
        if (value.isEmpty()) {
            throw fault(line, "head.bare", key);
        }
        try {
            take(key, value);
        } catch (IllegalArgumentException e) {
            throw Fault.at(file, line, e.getMessage());
        }
    }

    private IllegalArgumentException fault(int line, String key, Object... values) {
        return Fault.at(file, line, Fault.of(key, values));
    }

    private void take(String key, String value) {
        switch (key) {
            case "name" -> name = value;
            case "style" -> right((intent = intent.withStyle(value)).style());
            case "diet" -> right((intent = intent.withDiet(value)).diet());
            case "method" -> setup = setup.by(value);
            case "bath" -> bathOf(value);
            case "freezer" -> set(SetupField.FREEZER, value);
            case "air" -> set(SetupField.AIR, value);
            case "serving" -> set(SetupField.SERVING, value);
            case "stored" -> storedOf(value);
            case "total" -> total = right(Typed.of(value, RecipeTotal::of));
            case "target" -> goals.add(new Typed<>(value, Optional.of(targetsOf(value)), ""));
            case "own" -> ownOf(value);
            default -> throw new AssertionError(key);
        }
    }

    /** Sets a field as typed, or throws if it is wrong. */
    private void set(SetupField field, String text) {
        String typed = field.withoutUnit(text);
        right(field.read(typed));
        setup = setup.with(field, typed);
    }

    /** Returns a valid value, or throws with its fault. */
    static <T> Typed<T> right(Typed<T> typed) {
        if (!typed.fault().isEmpty()) {
            throw new IllegalArgumentException(typed.fault());
        }
        return typed;
    }

    private void bathOf(String value) {
        for (String part : value.split(",", -1)) {
            String words = part.strip().toLowerCase(Locale.ROOT);
            if (words.startsWith("ice ")) {
                set(SetupField.ICE, words.substring(4));
            } else if (words.startsWith("salt ")) {
                set(SetupField.SALT, words.substring(5));
            } else {
                throw Fault.in("bath", part.strip());
            }
        }
        if (!setup.has(SetupField.ICE)) {
            throw Fault.in("bath.no-ice");
        }
        if (!setup.has(SetupField.SALT)) {
            throw Fault.in("bath.no-salt");
        }
    }

    private void storedOf(String value) {
        for (String part : value.split(",", -1)) {
            String words = part.strip().toLowerCase(Locale.ROOT);
            if (words.startsWith("swinging ")) {
                set(SetupField.SWING, words.substring(9));
            } else if (words.matches("warmed to .+ for .+")) {
                int cut = words.lastIndexOf(" for ");
                set(SetupField.WARM, words.substring(10, cut));
                set(SetupField.WARM_FOR, words.substring(cut + 5));
            } else if (words.matches("[+-]?[0-9.].*")) {
                set(SetupField.DAYS, words);
            } else {
                throw Fault.in("stored", shortened(part.strip()));
            }
        }
        if (!setup.has(SetupField.DAYS)) {
            throw Fault.in("stored.no-days");
        }
    }

    private static List<Target> targetsOf(String value) {
        List<Target> targets = new ArrayList<>();
        for (String part : value.split(",", -1)) {
            String said = part.strip();
            boolean must = said.endsWith(" must");
            String words = said.replaceFirst(" (must|prefer)$", "");
            int cut = firstOfValue(words);
            String trait = words.substring(0, cut).strip();
            TypedQuantity amount =
                    TypedQuantity.of(trait.isEmpty() ? "target" : trait, words.substring(cut));
            targets.add(new Target(Trait.named(trait), amount.value(), must));
        }
        return List.copyOf(targets);
    }

    /** Index of the value: the last number of the part, so that "ice at -18 °C 70 %" works. */
    private static int firstOfValue(String words) {
        int cut = words.length();
        while (cut > 0 && !Character.isDigit(words.charAt(cut - 1))) {
            cut--;
        }
        while (cut > 0 && "0123456789.+-−".indexOf(words.charAt(cut - 1)) >= 0) {
            cut--;
        }
        if (cut == 0 || cut == words.length()) {
            throw Fault.in("target", words);
        }
        return cut;
    }

    private void ownOf(String value) {
        int equals = value.indexOf('=');
        if (equals < 1) {
            throw Fault.in("own");
        }
        String ownName = value.substring(0, equals).strip();
        Typed<Ingredient> described =
                Recipe.described(ownName, value.substring(equals + 1).strip());
        if (own.put(Recipe.nameOf(described), described) != null) {
            throw Fault.in("own.twice", ownName);
        }
    }

    static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, 57) + "…";
    }
}
