package coldwright.bench.confine;

import coldwright.bench.remote.CompiledClass;

import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.commons.ClassRemapper;
import org.objectweb.asm.commons.Remapper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The parts of a class file that the bench needs.
 *
 * @param name its own name, with slashes
 * @param access its access flags
 * @param above its superclass and interfaces, with slashes
 * @param members access flags of its fields and methods, by name and descriptor
 * @param touches every access of its code to a static field
 * @param caught every class that its code catches, with slashes, and {@link #CAUGHT_ANYTHING}
 * @param keepsStatics whether it declares a static field
 * @param snippetClasses every snippet class that it refers to, with dots
 */
public record SnippetClassFile(
        String name,
        int access,
        List<String> above,
        Map<String, Integer> members,
        List<FieldAccess> touches,
        Set<String> caught,
        boolean keepsStatics,
        Set<String> snippetClasses) {
    /** Marks {@code finally} and {@code synchronized}, which catch everything. */
    public static final String CAUGHT_ANYTHING = "*";

    /**
     * An access to a static field.
     *
     * @param method the method whose code it is
     * @param owner the field's class, with slashes
     * @param descriptor the field's type, as a class file writes it
     * @param write whether it is written
     */
    public record FieldAccess(String method, String owner, String descriptor, boolean write) {}

    /** Reads a class file. */
    public static SnippetClassFile of(CompiledClass code) {
        ClassAnalyzer reading = new ClassAnalyzer();
        SnippetNames names = new SnippetNames();
        new ClassReader(code.bytes())
                .accept(new ClassRemapper(reading, names), ClassReader.SKIP_FRAMES);
        return new SnippetClassFile(
                reading.name,
                reading.access,
                reading.above,
                reading.members,
                reading.touches,
                reading.caught,
                reading.keepsStatics,
                names.found);
    }

    /**
     * Whether a running JVM can replace this class' bodies with the other's.
     *
     * @param other the same class compiled again
     */
    public boolean sameShapeAs(SnippetClassFile other) {
        return name.equals(other.name)
                && access == other.access
                && above.equals(other.above)
                && members.equals(other.members);
    }

    /** Collects every class name in a class file without changing any. */
    private static final class SnippetNames extends Remapper {
        private final Set<String> found = new TreeSet<>();

        SnippetNames() {
            super(Opcodes.ASM9);
        }

        @Override
        public String map(String internalName) {
            if (internalName.startsWith(NameCheck.SNIPPETS)) {
                found.add(internalName.replace('/', '.'));
            }
            return internalName;
        }
    }

    private static final class ClassAnalyzer extends ClassVisitor {
        private final List<String> above = new ArrayList<>();
        private final Map<String, Integer> members = new TreeMap<>();
        private final List<FieldAccess> touches = new ArrayList<>();
        private final Set<String> caught = new TreeSet<>();
        private String name;
        private int access;
        private boolean keepsStatics;

        ClassAnalyzer() {
            super(Opcodes.ASM9);
        }

        @Override
        public void visit(
                int version,
                int itsAccess,
                String itsName,
                String signature,
                String superclass,
                String[] interfaces) {
            name = itsName;
            access = itsAccess;
            above.add(superclass);
            above.addAll(List.of(interfaces));
        }

        @Override
        public FieldVisitor visitField(
                int itsAccess, String field, String descriptor, String signature, Object value) {
            members.put(field + descriptor, itsAccess);
            keepsStatics |= (itsAccess & Opcodes.ACC_STATIC) != 0;
            return null;
        }

        @Override
        public MethodVisitor visitMethod(
                int itsAccess,
                String method,
                String descriptor,
                String signature,
                String[] thrown) {
            members.put(method + descriptor, itsAccess);
            return new MethodAnalyzer(method);
        }

        private final class MethodAnalyzer extends MethodVisitor {
            private final String method;

            MethodAnalyzer(String method) {
                super(Opcodes.ASM9);
                this.method = method;
            }

            @Override
            public void visitFieldInsn(int opcode, String owner, String name, String descriptor) {
                if (opcode == Opcodes.GETSTATIC || opcode == Opcodes.PUTSTATIC) {
                    boolean write = opcode == Opcodes.PUTSTATIC;
                    touches.add(new FieldAccess(method, owner, descriptor, write));
                }
            }

            @Override
            public void visitTryCatchBlock(Label start, Label end, Label handler, String type) {
                caught.add(type == null ? CAUGHT_ANYTHING : type);
            }
        }
    }
}
