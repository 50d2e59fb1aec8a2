package coldwright.bench.confine;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The classes and members that a confined snippet may name. The list is {@code allowed.txt}, which
 * also explains its form. What it doesn't list is refused.
 *
 * @param entries the listed classes by internal name, such as {@code java/util/List}
 */
record AllowedNames(Map<String, Entry> entries) {
    /** The list that comes with the program. */
    static final AllowedNames USUAL = read();

    private static final String EVERY_PUBLIC_MEMBER = "*";

    /** Members of every object that a snippet must not use, whatever class it names. */
    static final Set<String> NEVER = Set.of("wait", "notify", "notifyAll", "finalize", "clone");

    /**
     * A listed class.
     *
     * @param open whether a snippet may extend or implement it
     * @param members names of its members; {@code *} for all public ones; {@code !} before an
     *     overload, name and descriptor, that is refused
     */
    record Entry(boolean open, Set<String> members) {}

    private static AllowedNames read() {
        Map<String, Entry> entries = new HashMap<>();
        Set<String> members = Set.of();
        for (String line : lines()) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            List<String> words = List.of(line.strip().split(" +"));
            int begin = 0;
            if (!line.startsWith(" ")) {
                boolean open = words.get(0).equals("open");
                members = new HashSet<>();
                begin = open ? 2 : 1;
                String name = words.get(begin - 1).replace('.', '/');
                if (entries.put(name, new Entry(open, members)) != null) {
                    throw new IllegalStateException(name + " is listed twice");
                }
            }
            members.addAll(words.subList(begin, words.size()));
        }
        return new AllowedNames(Map.copyOf(entries));
    }

    private static List<String> lines() {
        try (InputStream in = AllowedNames.class.getResourceAsStream("allowed.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whether a snippet may name a class. */
    boolean type(String internalName) {
        return entries.containsKey(internalName);
    }

    /** Whether a snippet may extend or implement a class, or write it as a lambda. */
    boolean open(String internalName) {
        Entry entry = entries.get(internalName);
        return entry != null && entry.open();
    }

    /** Whether a snippet may use a member of a class, its own or an inherited one. */
    boolean member(String owner, String name, String descriptor) {
        Entry entry = entries.get(owner);
        if (entry == null || NEVER.contains(name)) {
            return false;
        }
        Set<String> members = entry.members();
        return (members.contains(name)
                        || members.contains(EVERY_PUBLIC_MEMBER)
                        || entries.get("java/lang/Object").members().contains(name)
                                && !name.equals("<init>"))
                && members.stream()
                        .noneMatch(
                                one ->
                                        one.startsWith("!")
                                                && (name + descriptor)
                                                        .startsWith(one.substring(1)));
    }
}
