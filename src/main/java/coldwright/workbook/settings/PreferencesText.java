package coldwright.workbook.settings;

import static coldwright.workbook.entry.WorkbookText.fault;
import static coldwright.workbook.entry.WorkbookText.refusal;

import coldwright.text.TextFault;
import coldwright.workbook.entry.KeyedEntryReader;
import coldwright.workbook.entry.ParsedEntries;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Settings as a readable text of {@code key: value} lines. */
public final class PreferencesText {
    private static final String HEADING = "Coldwright settings 1";
    private static final String TYPE_SIZE = "typeSizePercent";

    /** Missing in files of older versions. */
    private static final String CODE = "code";

    private static final String LANGUAGE = "language";

    /** The choices by their keys, in the order of the file, with their usual values. */
    private static final Map<String, Enum<?>> CHOICES = new LinkedHashMap<>();

    static {
        CHOICES.put("theme", Theme.LIGHT);
        CHOICES.put("temperature", TemperatureUnit.C);
        CHOICES.put("mass", MassUnit.G);
        CHOICES.put(CODE, CodeView.ESSENTIAL);
    }

    private static final List<String> KEYS =
            Stream.concat(
                            Stream.concat(
                                    Stream.of(TYPE_SIZE, LANGUAGE), CHOICES.keySet().stream()),
                            Arrays.stream(BenchLimit.values()).map(BenchLimit::key))
                    .toList();

    private final List<TextFault> faults = new ArrayList<>();
    private final List<String> others = new ArrayList<>();
    private final Set<String> seen = new HashSet<>();
    private Preferences read = Preferences.usual();

    private PreferencesText() {}

    /** Writes settings as a text that {@link #read} parses to the same settings. */
    public static String write(Preferences preferences) {
        List<String> lines = new ArrayList<>();
        lines.add(HEADING);
        lines.add(TYPE_SIZE + ": " + preferences.typeSizePercent());
        CHOICES.forEach(
                (key, usual) -> {
                    Enum<?> chosen = preferences.choices().get(usual.getDeclaringClass());
                    lines.add(key + ": " + word(chosen));
                });
        lines.add(LANGUAGE + ": " + preferences.language().tag());
        for (BenchLimit limit : BenchLimit.values()) {
            lines.add(limit.key() + ": " + preferences.limit(limit));
        }
        preferences.window().ifPresent(place -> lines.add("window: " + place.text()));
        lines.addAll(preferences.others());
        return String.join("\n", lines) + "\n";
    }

    /**
     * Reads settings, with a sentence for each error. Invalid and missing values get their
     * defaults, and so does all of another version's file.
     */
    public static ParsedEntries<Preferences> read(String text) {
        PreferencesText reader = new PreferencesText();
        String[] lines = text.split("\\R", -1);
        KeyedEntryReader.wrongHeading(lines[0], HEADING)
                .ifPresentOrElse(reader.faults::add, () -> reader.lines(lines));
        return new ParsedEntries<>(reader.read.withOthers(reader.others), reader.faults);
    }

    private void lines(String[] lines) {
        for (int i = 1; i < lines.length; i++) {
            if (!lines[i].isBlank()) {
                line(i + 1, lines[i]);
            }
        }
        String missing =
                KEYS.stream()
                        .filter(key -> !seen.contains(key) && !key.equals(CODE))
                        .collect(Collectors.joining(", "));
        if (!missing.isEmpty()) {
            faults.add(fault(lines.length, "setting.missing", missing));
        } else if (!lines[lines.length - 1].isEmpty()) {
            faults.add(fault(lines.length, "file.cut"));
        }
    }

    private void line(int number, String line) {
        int colon = line.indexOf(':');
        String key = line.substring(0, Math.max(0, colon)).strip();
        String value = line.substring(colon + 1).strip();
        try {
            boolean known = KEYS.contains(key) || key.equals("window");
            boolean again = known && !seen.add(key);
            Optional<Preferences> next = taken(key, value);
            if (next.isEmpty()) {
                others.add(line);
            } else if (!again) {
                read = next.get();
            } else {
                throw refusal("setting.twice", key);
            }
        } catch (IllegalArgumentException e) {
            faults.add(new TextFault(number, e.getMessage()));
        }
    }

    private Optional<Preferences> taken(String key, String value) {
        if (key.equals(TYPE_SIZE)) {
            int least = Preferences.LEAST_TYPE_SIZE_PERCENT;
            int most = Preferences.MOST_TYPE_SIZE_PERCENT;
            return Optional.of(read.withTypeSizePercent(number(key, value, least, most)));
        }
        if (key.equals("window")) {
            return Optional.of(read.with(WindowPlace.read(value)));
        }
        if (key.equals(LANGUAGE)) {
            return Optional.of(read.with(one(key, value, Language.all(), Language::tag)));
        }
        if (CHOICES.containsKey(key)) {
            return Optional.of(read.with(choice(key, value)));
        }
        return Arrays.stream(BenchLimit.values())
                .filter(one -> one.key().equals(key))
                .findFirst()
                .map(one -> read.with(one, number(key, value, one.least(), one.most())));
    }

    private static int number(String key, String value, int least, int most) {
        boolean whole = value.matches("-?\\d{1,9}");
        if (!whole || Integer.parseInt(value) < least || Integer.parseInt(value) > most) {
            throw refusal("setting.number", key, value, least, most);
        }
        return Integer.parseInt(value);
    }

    private static Enum<?> choice(String key, String value) {
        Enum<?>[] all = CHOICES.get(key).getDeclaringClass().getEnumConstants();
        return one(key, value, List.of(all), PreferencesText::word);
    }

    private static <V> V one(
            String key, String value, List<V> all, Function<? super V, String> word) {
        String words = all.stream().map(word).collect(Collectors.joining(", "));
        return all.stream()
                .filter(one -> word.apply(one).equalsIgnoreCase(value))
                .findFirst()
                .orElseThrow(() -> refusal("setting.choice", key, value, words));
    }

    private static String word(Enum<?> one) {
        return one instanceof TemperatureUnit ? one.name() : one.name().toLowerCase(Locale.ROOT);
    }
}
