package coldwright.workbook.settings;

import coldwright.text.TextFault;
import coldwright.workbook.entry.KeyedEntryReader;
import coldwright.workbook.entry.ParsedEntries;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Settings as a readable text of {@code key: value} lines. */
public final class PreferencesText {
    private static final String HEADING = "Coldwright settings 1";
    private static final String TYPE_SIZE = "typeSizePercent";
    private static final List<String> KEYS =
            Stream.concat(
                            Stream.of(TYPE_SIZE, "theme", "temperature", "mass", "language"),
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
        lines.add("theme: " + word(preferences.theme()));
        lines.add("temperature: " + preferences.temperatureUnit());
        lines.add("mass: " + word(preferences.massUnit()));
        lines.add("language: " + word(preferences.language()));
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
                KEYS.stream().filter(key -> !seen.contains(key)).collect(Collectors.joining(", "));
        if (!missing.isEmpty()) {
            faults.add(
                    new TextFault(
                            lines.length,
                            "%s is missing; Coldwright uses the usual value".formatted(missing)));
        } else if (!lines[lines.length - 1].isEmpty()) {
            faults.add(new TextFault(lines.length, KeyedEntryReader.CUT));
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
                throw new IllegalArgumentException(
                        "\"%s\" appears twice; Coldwright uses the first".formatted(key));
            }
        } catch (IllegalArgumentException e) {
            faults.add(new TextFault(number, e.getMessage()));
        }
    }

    private Optional<Preferences> taken(String key, String value) {
        return switch (key) {
            case TYPE_SIZE ->
                    Optional.of(
                            read.withTypeSizePercent(
                                    number(
                                            key,
                                            value,
                                            Preferences.LEAST_TYPE_SIZE_PERCENT,
                                            Preferences.MOST_TYPE_SIZE_PERCENT)));
            case "theme" -> Optional.of(read.with(one(Theme.class, key, value)));
            case "temperature" -> Optional.of(read.with(one(TemperatureUnit.class, key, value)));
            case "mass" -> Optional.of(read.with(one(MassUnit.class, key, value)));
            case "language" -> Optional.of(read.with(one(Language.class, key, value)));
            case "window" -> Optional.of(read.with(WindowPlace.read(value)));
            default ->
                    Arrays.stream(BenchLimit.values())
                            .filter(limit -> limit.key().equals(key))
                            .findFirst()
                            .map(
                                    limit ->
                                            read.with(
                                                    limit,
                                                    number(
                                                            key,
                                                            value,
                                                            limit.least(),
                                                            limit.most())));
        };
    }

    private static int number(String key, String value, int least, int most) {
        boolean whole = value.matches("-?\\d{1,9}");
        if (!whole || Integer.parseInt(value) < least || Integer.parseInt(value) > most) {
            throw new IllegalArgumentException(
                    "%s is \"%s\"; it must be a whole number from %d to %d; Coldwright uses the usual value"
                            .formatted(key, KeyedEntryReader.quoted(value), least, most));
        }
        return Integer.parseInt(value);
    }

    private static <E extends Enum<E>> E one(Class<E> kind, String key, String value) {
        return Arrays.stream(kind.getEnumConstants())
                .filter(one -> one.name().equalsIgnoreCase(value))
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "%s is \"%s\"; it must be %s; Coldwright uses the usual value"
                                                .formatted(
                                                        key,
                                                        KeyedEntryReader.quoted(value),
                                                        Arrays.stream(kind.getEnumConstants())
                                                                .map(PreferencesText::word)
                                                                .collect(
                                                                        Collectors.joining(
                                                                                " or ")))));
    }

    private static String word(Enum<?> one) {
        return one instanceof TemperatureUnit ? one.name() : one.name().toLowerCase(Locale.ROOT);
    }
}
