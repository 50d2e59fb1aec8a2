package coldwright.bench.confine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.FieldInsnNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What the calculator itself does when a snippet calls any of its listed methods: all that it may
 * call of Java beyond what a snippet may name, and all static fields that it sets. A call of a
 * method counts for every class that overrides it. A person reads each change of the file.
 */
final class OwnApiReachTest {
    private static final Path FILE = Path.of("src/test/resources/confine/own-api-uses.txt");
    private static final AllowedNames LIST = AllowedNames.USUAL;

    private final Map<String, ClassNode> classes = new HashMap<>();
    private final Map<String, List<String>> below = new HashMap<>();
    private final Set<String> seen = new HashSet<>();
    private final Deque<String[]> open = new ArrayDeque<>();
    private final Set<String> uses = new TreeSet<>();

    private static boolean isOurs(String internalName) {
        return internalName.startsWith("coldwright/")
                || internalName.startsWith("org/hipparchus/")
                || internalName.startsWith("org/apache/commons/");
    }

    private ClassNode node(String internalName) {
        return classes.computeIfAbsent(
                internalName,
                name -> {
                    try (InputStream in =
                            getClass().getClassLoader().getResourceAsStream(name + ".class")) {
                        ClassNode node = new ClassNode();
                        new ClassReader(in).accept(node, ClassReader.SKIP_DEBUG);
                        return node;
                    } catch (IOException e) {
                        throw new AssertionError(name, e);
                    }
                });
    }

    /** Finds who overrides what, among the calculator's own classes. */
    private void readHierarchy() throws IOException {
        Path root = Path.of(coldwright.Main.class.getResource("/coldwright").getPath());
        try (var files = Files.walk(root)) {
            for (Path file : files.filter(one -> one.toString().endsWith(".class")).toList()) {
                String name =
                        "coldwright/" + root.relativize(file).toString().replace(".class", "");
                ClassNode node = node(name.replace('\\', '/'));
                above(node)
                        .forEach(
                                one ->
                                        below.computeIfAbsent(one, key -> new ArrayList<>())
                                                .add(node.name));
            }
        }
    }

    private static Stream<String> above(ClassNode node) {
        return Stream.concat(node.interfaces.stream(), Stream.ofNullable(node.superName));
    }

    private static boolean declares(String javaClass, String name) {
        try {
            return Stream.of(Class.forName(javaClass.replace('/', '.')).getDeclaredMethods())
                    .anyMatch(one -> one.getName().equals(name));
        } catch (ClassNotFoundException e) {
            throw new AssertionError(e);
        }
    }

    private void call(String owner, String name, String descriptor) {
        if (seen.add(owner + "." + name + descriptor)) {
            open.add(new String[] {owner, name, descriptor});
        }
    }

    private void follow(String owner, String name, String descriptor) {
        if (!isOurs(owner)) {
            if (!owner.startsWith("[") && !LIST.member(owner, name, descriptor)) {
                uses.add("calls " + owner.replace('/', '.') + "." + name);
            }
            return;
        }
        ClassNode node = node(owner);
        call(owner, "<clinit>", "()V");
        boolean found = false;
        for (MethodNode method : node.methods) {
            if (method.name.equals(name) && method.desc.equals(descriptor)) {
                found = true;
                method.instructions.forEach(one -> instruction(one, method));
            }
        }
        if (!found && !name.equals("<clinit>")) {
            above(node)
                    .filter(one -> isOurs(one) || declares(one, name))
                    .forEach(one -> call(one, name, descriptor));
        }
        if (!name.startsWith("<")) {
            below.getOrDefault(owner, List.of()).forEach(one -> call(one, name, descriptor));
        }
    }

    private void instruction(AbstractInsnNode one, MethodNode in) {
        if (one instanceof MethodInsnNode call) {
            call(call.owner, call.name, call.desc);
        } else if (one instanceof FieldInsnNode field) {
            if (isOurs(field.owner)) {
                call(field.owner, "<clinit>", "()V");
            } else if (!LIST.member(field.owner, field.name, field.desc)) {
                uses.add("reads " + field.owner.replace('/', '.') + "." + field.name);
            }
            if (field.getOpcode() == Opcodes.PUTSTATIC && !in.name.equals("<clinit>")) {
                uses.add("sets " + field.owner.replace('/', '.') + "." + field.name);
            }
        } else if (one instanceof InvokeDynamicInsnNode dynamic) {
            for (Object argument : dynamic.bsmArgs) {
                if (argument instanceof Handle handle) {
                    call(handle.getOwner(), handle.getName(), handle.getDesc());
                }
            }
        }
    }

    @Test
    void usesOfJavaWhatAPersonHasRead() throws IOException {
        readHierarchy();
        for (String name : LIST.entries().keySet()) {
            if (name.startsWith("coldwright/")) {
                for (MethodNode method : node(name).methods) {
                    if ((method.access & Opcodes.ACC_PUBLIC) != 0
                            && LIST.member(name, method.name, method.desc)) {
                        call(name, method.name, method.desc);
                    }
                }
            }
        }
        while (!open.isEmpty()) {
            String[] next = open.remove();
            follow(next[0], next[1], next[2]);
        }
        assertTrue(seen.size() > 3_000, "too little was followed: " + seen.size());
        if (Boolean.getBoolean("reach.write")) {
            Files.write(FILE, uses);
        }
        assertEquals(String.join("\n", Files.readAllLines(FILE)), String.join("\n", uses));
    }
}
