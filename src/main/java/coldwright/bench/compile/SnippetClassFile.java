package coldwright.bench.compile;

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
import java.util.Set;
import java.util.TreeSet;

/**
 * The parts of a class file that the bench needs.
 *
 * @param name its own name, with slashes
 * @param head access, superclass and interfaces
 * @param fields each as access, name, descriptor
 * @param methods each as access, name, descriptor
 * @param touches every access of its code to a static field
 * @param caught every class that its code catches, with slashes, and {@link #CAUGHT_ANYTHING}
 * @param keepsStatics whether it declares a static field
 * @param snippetClasses every snippet class that it refers to, with dots
 */
record SnippetClassFile(
        String name,
        String head,
        Set<String> fields,
        Set<String> methods,
        List<FieldAccess> touches,
        Set<String> caught,
        boolean keepsStatics,
        Set<String> snippetClasses) {
    /** Marks {@code finally} and {@code synchronized}, which catch everything. */
    static final String CAUGHT_ANYTHING = "*";

    /**
     * An access to a static field.
     *
     * @param method the method whose code it is
     * @param owner the field's class, with slashes
     * @param descriptor the field's type, as a class file writes it
     * @param write whether it is written
     */
    record FieldAccess(String method, String owner, String descriptor, boolean write) {}

    /** Reads a class file. */
    static SnippetClassFile of(CompiledClass code) {
        ClassAnalyzer reading = new ClassAnalyzer();
        SnippetNames names = new SnippetNames();
        new ClassReader(code.bytes())
                .accept(new ClassRemapper(reading, names), ClassReader.SKIP_FRAMES);
        return new SnippetClassFile(
                reading.name,
                String.join(" ", reading.head),
                reading.fields,
                reading.methods,
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
    boolean sameShapeAs(SnippetClassFile other) {
        return name.equals(other.name)
                && head.equals(other.head)
                && fields.equals(other.fields)
                && methods.equals(other.methods);
    }

    /** Collects every class name in a class file without changing any. */
    private static final class SnippetNames extends Remapper {
        private final Set<String> found = new TreeSet<>();

        SnippetNames() {
            super(Opcodes.ASM9);
        }

        @Override
        public String map(String internalName) {
            if (OrderCompleter.isSnippet(internalName.replace('/', '.'))) {
                found.add(internalName.replace('/', '.'));
            }
            return internalName;
        }
    }

    private static final class ClassAnalyzer extends ClassVisitor {
        private final List<String> head = new ArrayList<>();
        private final Set<String> fields = new TreeSet<>();
        private final Set<String> methods = new TreeSet<>();
        private final List<FieldAccess> touches = new ArrayList<>();
        private final Set<String> caught = new TreeSet<>();
        private String name;
        private boolean keepsStatics;

        ClassAnalyzer() {
            super(Opcodes.ASM9);
        }

        @Override
        public void visit(
                int version,
                int access,
                String itsName,
                String signature,
                String above,
                String[] interfaces) {
            name = itsName;
            head.add(Integer.toHexString(access));
            head.add(above == null ? "" : above);
            head.addAll(List.of(interfaces));
        }

        @Override
        public FieldVisitor visitField(
                int access, String field, String descriptor, String signature, Object value) {
            fields.add(member(access, field, descriptor));
            keepsStatics |= (access & Opcodes.ACC_STATIC) != 0;
            return null;
        }

        @Override
        public MethodVisitor visitMethod(
                int access, String method, String descriptor, String signature, String[] thrown) {
            methods.add(member(access, method, descriptor));
            return new MethodAnalyzer(method);
        }

        private static String member(int access, String name, String descriptor) {
            return Integer.toHexString(access) + " " + name + " " + descriptor;
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
