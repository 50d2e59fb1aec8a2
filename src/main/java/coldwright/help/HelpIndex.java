package coldwright.help;

import coldwright.source.JavaSource;
import coldwright.source.JavaToken;
import coldwright.source.JavaToken.Kind;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
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
    private static final int COLUMNS = 9;
    private static final Pattern LINE_END = Pattern.compile("\\\\n");
    private static final HelpIndex THIS = read(resource(BUILT) + "\n" + resource(JAVA));

    private final Map<String, List<HelpEntry>> byName = new HashMap<>();
    private final Map<String, Map<String, List<HelpEntry>>> byOwner = new HashMap<>();
    private final Map<String, List<HelpEntry>> bareByName = new HashMap<>();

    private HelpIndex() {}

    /** Adds a row: the entry, and whether a snippet may use its name without its owner. */
    private void add(String line) {
        String[] columns = line.split("\t", -1);
        if (columns.length != COLUMNS) {
            throw new IllegalArgumentException(
                    "the help row \"%s\" has %d columns; it must have %d: build the index again"
                            .formatted(line, columns.length, COLUMNS));
        }
        HelpEntry entry =
                new HelpEntry(
                        columns[0],
                        columns[1],
                        HelpEntry.Kind.valueOf(columns[2].toUpperCase(Locale.ROOT)),
                        columns[3],
                        columns[4],
                        columns[5],
                        columns[6].isEmpty() ? List.of() : List.of(LINE_END.split(columns[6])),
                        columns[7]);
        add(byName, entry.name(), entry);
        add(byOwner.computeIfAbsent(entry.owner(), any -> new HashMap<>()), entry.name(), entry);
        if (columns[8].equals("bare")) {
            add(bareByName, entry.name(), entry);
        }
    }

    private static void add(Map<String, List<HelpEntry>> map, String key, HelpEntry entry) {
        map.computeIfAbsent(key, any -> new ArrayList<>()).add(entry);
    }

    /**
     * The help of this program, read at first use; only Java's own words if the program wasn't
     * built by Maven.
     */
    public static HelpIndex ofThisProgram() {
        return THIS;
    }

    /**
     * Reads an index.
     *
     * @param rows as the build writes them: one entry per line, columns separated by tabs; empty
     *     lines and those that begin with {@code # } are ignored
     * @throws IllegalArgumentException if a row has the wrong number of columns
     */
    static HelpIndex read(String rows) {
        HelpIndex index = new HelpIndex();
        rows.lines().filter(line -> !line.isBlank() && !line.startsWith("# ")).forEach(index::add);
        return index;
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
        if (caret < 0 || caret > text.length()) {
            throw new IllegalArgumentException(
                    "caret is %d; it must be between 0 and %d, the length of the text"
                            .formatted(caret, text.length()));
        }
        JavaSource source = JavaSource.of(text);
        List<JavaToken> code = source.code();
        int at = 0;
        while (at < code.size()
                && (code.get(at).kind() != Kind.WORD || code.get(at).end() < caret)) {
            at++;
        }
        if (at == code.size() || code.get(at).start() > caret) {
            return List.of();
        }
        String name = source.text(code.get(at));
        String point = at > 0 ? source.text(code.get(at - 1)) : "";
        if (!point.equals(".") && !point.equals("::")) {
            return alone(name);
        }
        if (receiverType.isPresent()) {
            return of(receiverType.get(), name);
        }
        boolean named = at > 1 && code.get(at - 2).kind() == Kind.WORD;
        List<HelpEntry> onType = of(named ? source.text(code.get(at - 2)) : "", name);
        return onType.isEmpty() ? onlyOwner(named(name)) : onType;
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
