package coldwright.help;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Help on every name that a snippet may use.
 *
 * <pre>{@code
 * HelpIndex help = HelpIndex.ofThisProgram();
 * help.of("FreezingCurve", "icePercentAt");
 * help.at("curve.icePercentAt(-18)", 10, Optional.of("FreezingCurve"));
 * }</pre>
 */
public final class HelpIndex {
    private static final String BUILT = "index.tsv";
    private static final String JAVA = "java.tsv";

    private final Map<String, List<HelpEntry>> byName = new HashMap<>();
    private final Map<String, Map<String, List<HelpEntry>>> byOwner = new HashMap<>();
    private final Map<String, List<HelpEntry>> bareByName = new HashMap<>();

    private HelpIndex(List<HelpEntryReader.Row> rows) {
        for (HelpEntryReader.Row row : rows) {
            HelpEntry entry = row.entry();
            add(byName, entry.name(), entry);
            add(
                    byOwner.computeIfAbsent(entry.owner(), any -> new HashMap<>()),
                    entry.name(),
                    entry);
            if (row.bare()) {
                add(bareByName, entry.name(), entry);
            }
        }
    }

    private static void add(Map<String, List<HelpEntry>> map, String key, HelpEntry entry) {
        map.computeIfAbsent(key, any -> new ArrayList<>()).add(entry);
    }

    private static final class Loaded {
        static final HelpIndex INDEX = read(resource(BUILT) + "\n" + resource(JAVA));
    }

    /**
     * The help of this program, read at first use; only Java's own words if the program wasn't
     * built by Maven.
     */
    public static HelpIndex ofThisProgram() {
        return Loaded.INDEX;
    }

    /**
     * Reads an index.
     *
     * @param rows as the build writes them
     * @throws IllegalArgumentException if a row is malformed
     */
    static HelpIndex read(String rows) {
        return new HelpIndex(HelpEntryReader.read(rows));
    }

    private static String resource(String name) {
        try (InputStream in = HelpIndex.class.getResourceAsStream(name)) {
            return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * All entries with this name, whatever their owner.
     *
     * @param name such as {@code massG}
     */
    public List<HelpEntry> named(String name) {
        return List.copyOf(byName.getOrDefault(name, List.of()));
    }

    /**
     * The entries for a name on a type, more than one if it is overloaded.
     *
     * @param owner the type, with or without package and type arguments; empty for a top-level type
     * @param name such as {@code massG}
     */
    public List<HelpEntry> of(String owner, String name) {
        String type = simple(owner);
        List<HelpEntry> own = byOwner.getOrDefault(type, Map.of()).getOrDefault(name, List.of());
        if (own.isEmpty() && byOwner.containsKey(type)) {
            own =
                    byName.getOrDefault(name, List.of()).stream()
                            .filter(entry -> isInterface(entry.owner()))
                            .toList();
        }
        return List.copyOf(own);
    }

    /**
     * The entries for a name without an expression before it.
     *
     * @param name such as {@code grams}, {@code SUCROSE}, {@code Mix} or {@code for}
     * @return empty if it can't be used alone, or the learner declared it
     */
    public List<HelpEntry> alone(String name) {
        return List.copyOf(bareByName.getOrDefault(name, List.of()));
    }

    /**
     * The entries for the word at the caret.
     *
     * @param text a snippet
     * @param caret position in it, 0 to its length
     * @param receiverType the type of the expression before the word's dot, if known
     * @return empty if the word is unknown
     * @throws IllegalArgumentException if the caret is outside the text
     */
    public List<HelpEntry> at(String text, int caret, Optional<String> receiverType) {
        Optional<WordAtCaret> found = WordAtCaret.at(text, caret);
        if (found.isEmpty()) {
            return List.of();
        }
        WordAtCaret word = found.get();
        if (!word.afterPoint()) {
            return alone(word.name());
        }
        if (receiverType.isPresent()) {
            return of(receiverType.get(), word.name());
        }
        List<HelpEntry> onType = of(word.before(), word.name());
        return onType.isEmpty() ? onlyOwner(named(word.name())) : onType;
    }

    /** The entries if all belong to one type, because no help is better than wrong help. */
    private static List<HelpEntry> onlyOwner(List<HelpEntry> entries) {
        Set<String> owners = entries.stream().map(HelpEntry::owner).collect(Collectors.toSet());
        return owners.size() == 1 && !owners.contains("") ? entries : List.of();
    }

    private boolean isInterface(String owner) {
        String name = owner.substring(owner.lastIndexOf('.') + 1);
        return byName.getOrDefault(name, List.of()).stream()
                .anyMatch(entry -> entry.kind() == HelpEntry.Kind.INTERFACE);
    }

    /** A type without its package and type arguments. */
    static String simple(String type) {
        String plain = type.replaceAll("<.*>|\\[]", "").strip();
        return plain.replaceFirst("^(?:[a-z]\\w*\\.)+(?=[A-Z])", "");
    }
}
