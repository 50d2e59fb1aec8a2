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
     * The help of this program, read when first asked for.
     *
     * @return the index; of Java's own words alone if the program was not built by Maven
     */
    public static HelpIndex ofThisProgram() {
        return Loaded.INDEX;
    }

    /**
     * Reads an index.
     *
     * @param rows as the build writes them
     * @return the index
     * @throws IllegalArgumentException if a row is damaged
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
     * Everything of a name, whatever it belongs to.
     *
     * @param name such as {@code massG}
     * @return the entries; empty if none is called so
     */
    public List<HelpEntry> named(String name) {
        return List.copyOf(byName.getOrDefault(name, List.of()));
    }

    /**
     * What a name means on a type.
     *
     * @param owner the type, with or without its package and what stands between {@code <} and
     *     {@code >}; empty for a type of its own
     * @param name such as {@code massG}
     * @return the entries, more than one if it can be called in several ways; empty if there is
     *     none
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
     * What a name means where nothing stands before it with a point.
     *
     * @param name such as {@code grams}, {@code SUCROSE}, {@code Mix} or {@code for}
     * @return the entries; empty if it can't stand alone, or is the learner's own
     */
    public List<HelpEntry> alone(String name) {
        return List.copyOf(bareByName.getOrDefault(name, List.of()));
    }

    /**
     * Help on the word under the caret.
     *
     * @param text a snippet
     * @param caret where the caret stands in it, 0 to its length
     * @param receiverType the type of what stands before the word's point, if it is known
     * @return the entries of the word; empty if nothing is known of it
     * @throws IllegalArgumentException if the caret stands outside the text
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

    /** Help is better silent than wrong: the entries if all belong to one type. */
    private static List<HelpEntry> onlyOwner(List<HelpEntry> entries) {
        Set<String> owners = entries.stream().map(HelpEntry::owner).collect(Collectors.toSet());
        return owners.size() == 1 && !owners.contains("") ? entries : List.of();
    }

    private boolean isInterface(String owner) {
        String name = owner.substring(owner.lastIndexOf('.') + 1);
        return byName.getOrDefault(name, List.of()).stream()
                .anyMatch(entry -> entry.kind() == HelpEntry.Kind.INTERFACE);
    }

    /** A type without its package and without what it is a type of. */
    static String simple(String type) {
        String plain = type.replaceAll("<.*>|\\[]", "").strip();
        return plain.replaceFirst("^(?:[a-z]\\w*\\.)+(?=[A-Z])", "");
    }
}
