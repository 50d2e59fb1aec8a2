package coldwright.bench.confine;

import coldwright.bench.remote.CompiledClass;

import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.ConstantDynamic;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.ClassRemapper;
import org.objectweb.asm.commons.Remapper;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Finds what a compiled class names beyond the list: every type in its descriptors, signatures,
 * constants and annotations, every member that its code uses, its supertypes, and what its lambdas
 * and switches are made with.
 */
public final class NameCheck {
    static final String SNIPPETS = "REPL/$JShell$";
    private static final String FACTORY = "java/lang/invoke/LambdaMetafactory";
    private static final int SERIALIZABLE = 1;

    /** The methods that javac names to make lambdas, texts, records and switches. */
    private static final Set<String> BOOTSTRAPS =
            Set.of(
                    FACTORY + ".metafactory",
                    FACTORY + ".altMetafactory",
                    "java/lang/invoke/StringConcatFactory.makeConcatWithConstants",
                    "java/lang/runtime/ObjectMethods.bootstrap",
                    "java/lang/runtime/SwitchBootstraps.typeSwitch",
                    "java/lang/runtime/SwitchBootstraps.enumSwitch");

    /** The constants and methods that javac names for switches on enums. */
    private static final Set<String> SWITCH_CONSTANTS =
            Set.of(
                    "java/lang/invoke/ConstantBootstraps.invoke",
                    "java/lang/constant/ClassDesc.of",
                    "java/lang/Enum$EnumDesc.of");

    private final AllowedNames allowed;
    private final Function<String, Optional<SnippetClassFile>> snippetTypes;
    private final Set<RefusedName> refused = new LinkedHashSet<>();

    private NameCheck(
            AllowedNames allowed, Function<String, Optional<SnippetClassFile>> snippetTypes) {
        this.allowed = allowed;
        this.snippetTypes = snippetTypes;
    }

    /**
     * The names that a class may not use.
     *
     * @param code the class
     * @param known finds the class of another snippet by its binary name; null if there is none
     * @return empty if a confined bench may define it
     */
    public static Set<RefusedName> refused(
            CompiledClass code, Function<String, CompiledClass> known) {
        NameCheck check =
                new NameCheck(
                        AllowedNames.USUAL,
                        name ->
                                Optional.ofNullable(known.apply(name.replace('/', '.')))
                                        .map(SnippetClassFile::of));
        new ClassReader(code.bytes())
                .accept(
                        check.new Members(new ClassRemapper(new ClassWriter(0), check.new Types())),
                        ClassReader.SKIP_DEBUG | ClassReader.SKIP_FRAMES);
        return check.refused;
    }

    private static boolean isSnippet(String internalName) {
        return internalName.startsWith(SNIPPETS);
    }

    private void refuse(String owner, String member) {
        refused.add(new RefusedName(owner.replace('/', '.'), member));
    }

    private void type(String internalName) {
        if (!isSnippet(internalName) && !allowed.type(internalName)) {
            refuse(internalName, "");
        }
    }

    private void superType(String internalName) {
        if (!isSnippet(internalName) && !allowed.open(internalName)) {
            refuse(internalName, "");
        }
    }

    private void member(String owner, String name, String descriptor) {
        boolean fits;
        if (owner.startsWith("[")) {
            fits = name.equals("clone") || allowed.member("java/lang/Object", name, descriptor);
        } else if (isSnippet(owner)) {
            fits = inherited(owner, name, descriptor, new HashSet<>());
        } else {
            fits = allowed.member(owner, name, descriptor);
        }
        if (!fits) {
            refuse(AllowedNames.NEVER.contains(name) ? "java/lang/Object" : owner, name);
        }
    }

    /** Whether a snippet's class declares a member, or inherits it from a class that allows it. */
    private boolean inherited(String owner, String name, String descriptor, Set<String> seen) {
        if (!isSnippet(owner)) {
            return allowed.member(owner, name, descriptor);
        }
        Optional<SnippetClassFile> type =
                seen.add(owner) ? snippetTypes.apply(owner) : Optional.empty();
        return type.isPresent()
                && (type.get().members().containsKey(name + descriptor)
                        || type.get().above().stream()
                                .anyMatch(one -> inherited(one, name, descriptor, seen)));
    }

    private void handle(Handle handle) {
        if (!SWITCH_CONSTANTS.contains(named(handle))) {
            new Types().mapType(handle.getOwner());
            member(handle.getOwner(), handle.getName(), handle.getDesc());
        }
    }

    private void constant(Object constant) {
        if (constant instanceof Handle handle) {
            handle(handle);
        } else if (constant instanceof ConstantDynamic dynamic) {
            if (!SWITCH_CONSTANTS.contains(named(dynamic.getBootstrapMethod()))) {
                refuse(dynamic.getBootstrapMethod().getOwner(), "");
            }
            for (int i = 0; i < dynamic.getBootstrapMethodArgumentCount(); i++) {
                constant(dynamic.getBootstrapMethodArgument(i));
            }
        } else if (constant instanceof Type type) {
            new Types().mapValue(type);
        }
    }

    private static String named(Handle handle) {
        return handle.getOwner() + "." + handle.getName();
    }

    /** Sees every type that the class file names. */
    private final class Types extends Remapper {
        Types() {
            super(Opcodes.ASM9);
        }

        @Override
        public String map(String internalName) {
            type(internalName);
            return internalName;
        }
    }

    /** Sees the members, and leaves the types to the next visitor. */
    private final class Members extends ClassVisitor {
        Members(ClassVisitor types) {
            super(Opcodes.ASM9, types);
        }

        @Override
        public void visit(
                int version, int access, String name, String signature, String above, String[] of) {
            if (!isSnippet(name)) {
                refuse(name, "");
            }
            superType(above);
            for (String one : of) {
                superType(one);
            }
            super.visit(version, access, name, signature, above, of);
        }

        @Override
        public void visitInnerClass(String name, String outer, String inner, int access) {
            // repeats what the code names, and MethodHandles.Lookup for each lambda
        }

        @Override
        public MethodVisitor visitMethod(
                int access, String name, String descriptor, String signature, String[] thrown) {
            if ((access & Opcodes.ACC_NATIVE) != 0) {
                refuse("java/lang/System", "loadLibrary");
            }
            if (name.equals("finalize") && descriptor.equals("()V")) {
                refuse("java/lang/Object", "finalize");
            }
            return new Code(super.visitMethod(access, name, descriptor, signature, thrown));
        }
    }

    private final class Code extends MethodVisitor {
        Code(MethodVisitor types) {
            super(Opcodes.ASM9, types);
        }

        @Override
        public void visitMethodInsn(
                int opcode, String owner, String name, String descriptor, boolean ofInterface) {
            super.visitMethodInsn(opcode, owner, name, descriptor, ofInterface);
            member(owner, name, descriptor);
        }

        @Override
        public void visitFieldInsn(int opcode, String owner, String name, String descriptor) {
            super.visitFieldInsn(opcode, owner, name, descriptor);
            member(owner, name, descriptor);
        }

        @Override
        public void visitInvokeDynamicInsn(
                String name, String descriptor, Handle bootstrap, Object... arguments) {
            String named = named(bootstrap);
            boolean lambda = bootstrap.getOwner().equals(FACTORY);
            if (!BOOTSTRAPS.contains(named)) {
                refuse(bootstrap.getOwner(), bootstrap.getName());
            } else if (lambda) {
                superType(Type.getReturnType(descriptor).getInternalName());
            }
            if (lambda && bootstrap.getName().equals("altMetafactory")) {
                if (((Integer) arguments[3] & SERIALIZABLE) != 0) {
                    refuse("java/io/Serializable", "");
                }
                for (int i = 4; i < arguments.length; i++) {
                    if (arguments[i] instanceof Type type && type.getSort() == Type.OBJECT) {
                        superType(type.getInternalName());
                    }
                }
            }
            new Types().mapMethodDesc(descriptor);
            for (Object argument : arguments) {
                constant(argument);
            }
        }

        @Override
        public void visitLdcInsn(Object value) {
            constant(value);
        }
    }
}
