package coldwright.bench.confine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.objectweb.asm.Type;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * All that the list lets a snippet reach, as files that a person reads when they change. To write
 * them again: {@code mvn test -Dtest=AllowedNamesTest -Dreach.write=true}, on 17 and on 25.
 */
final class AllowedNamesTest {
    private static final Path FOLDER = Path.of("src/test/resources/confine");
    private static final AllowedNames LIST = AllowedNames.USUAL;
    private static final boolean WRITE = Boolean.getBoolean("reach.write");
    private static final int FEATURE = Runtime.version().feature();

    private static Set<String> reached(boolean own) {
        Set<String> reached = new TreeSet<>();
        for (String internal : LIST.entries().keySet()) {
            if (internal.startsWith("coldwright/") == own) {
                try {
                    members(
                            Class.forName(internal.replace('/', '.'), false, loader()),
                            internal,
                            reached);
                } catch (ClassNotFoundException e) {
                    // of a newer Java than this one
                }
            }
        }
        return reached;
    }

    private static ClassLoader loader() {
        return AllowedNamesTest.class.getClassLoader();
    }

    private static void members(Class<?> type, String internal, Set<String> reached) {
        boolean open = LIST.open(internal);
        String name = internal.replace('/', '.');
        reached.add((open ? "open " : "") + name);
        List<Executable> all = new ArrayList<>(List.of(type.getMethods()));
        all.addAll(List.of(type.getDeclaredConstructors()));
        Stream.of(type.getDeclaredMethods())
                .filter(one -> open && Modifier.isProtected(one.getModifiers()))
                .forEach(all::add);
        for (Executable one : all) {
            boolean visible =
                    Modifier.isPublic(one.getModifiers())
                            || open && Modifier.isProtected(one.getModifiers());
            String member = one instanceof Constructor<?> ? "<init>" : one.getName();
            String descriptor =
                    one instanceof Method method
                            ? Type.getMethodDescriptor(method)
                            : Type.getConstructorDescriptor((Constructor<?>) one);
            if (visible
                    && !one.isSynthetic()
                    && LIST.member(internal, member, descriptor)
                    && allListed(descriptor)) {
                reached.add(name + " " + member + descriptor);
            }
        }
        for (Field one : type.getFields()) {
            String descriptor = Type.getDescriptor(one.getType());
            if (LIST.member(internal, one.getName(), descriptor)
                    && listed(Type.getType(descriptor))) {
                boolean changes = !Modifier.isFinal(one.getModifiers());
                reached.add(name + " " + one.getName() + " " + descriptor + (changes ? " !" : ""));
            }
        }
    }

    /** Whether a snippet may name all types of a method. */
    static boolean allListed(String descriptor) {
        return Stream.concat(
                        Stream.of(Type.getArgumentTypes(descriptor)),
                        Stream.of(Type.getReturnType(descriptor)))
                .allMatch(AllowedNamesTest::listed);
    }

    private static boolean listed(Type type) {
        Type element = type.getSort() == Type.ARRAY ? type.getElementType() : type;
        return element.getSort() != Type.OBJECT || LIST.type(element.getInternalName());
    }

    private static Set<String> read(String file) throws IOException {
        return new TreeSet<>(Files.readAllLines(FOLDER.resolve(file)));
    }

    private static void compare(String file, Set<String> now) throws IOException {
        if (WRITE) {
            Files.write(FOLDER.resolve(file), now);
        }
        Set<String> more = new TreeSet<>(now);
        more.removeAll(read(file));
        Set<String> less = read(file);
        less.removeAll(now);
        assertEquals("more [], less []", "more " + more + ", less " + less, file);
    }

    @Test
    void reachesOfJavaWhatAPersonHasRead() throws IOException {
        Set<String> now = reached(false);
        assertTrue(now.size() > 3_000, "too little was looked at: " + now.size());
        if (FEATURE == 17) {
            compare("reach-java-17.txt", now);
            return;
        }
        Set<String> changes = new TreeSet<>();
        now.stream()
                .filter(one -> !contains("reach-java-17.txt", one))
                .forEach(one -> changes.add("+ " + one));
        read("reach-java-17.txt").stream()
                .filter(one -> !now.contains(one))
                .forEach(one -> changes.add("- " + one));
        if (FEATURE == 25) {
            compare("reach-java-25-changes.txt", changes);
        } else {
            changes.removeIf(one -> contains("reach-java-25-changes.txt", one));
            changes.removeIf(one -> one.startsWith("- "));
            assertEquals(Set.of(), changes, "reached on Java " + FEATURE + " only");
        }
    }

    private static boolean contains(String file, String line) {
        try {
            return read(file).contains(line);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void reachesOfOursWhatAPersonHasRead() throws IOException {
        compare("reach-coldwright.txt", reached(true));
    }

    @Test
    void noFieldThatASnippetReachesCanBeSet() {
        assertEquals(
                List.of(),
                Stream.concat(reached(true).stream(), reached(false).stream())
                        .filter(one -> one.endsWith(" !"))
                        .toList());
    }

    @Test
    void theListIsSortedWithinItsSections() throws IOException {
        String last = "";
        for (String line :
                Files.readAllLines(
                        Path.of("src/main/resources/coldwright/bench/confine/allowed.txt"))) {
            if (line.startsWith("#")) {
                last = "";
            } else if (!line.isBlank() && !line.startsWith(" ")) {
                String name = line.replaceFirst("^open ", "").replaceFirst(" .*", "");
                assertTrue(name.compareTo(last) > 0, name + " comes after " + last);
                last = name;
            }
        }
    }
}
