package coldwright.bench.confine;

import coldwright.bench.remote.CompiledClass;

import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A class of a snippet as others see it.
 *
 * @param above its superclass and interfaces, internal names
 * @param declared its own members, each as name and descriptor
 */
record SnippetType(List<String> above, Set<String> declared) {
    static SnippetType of(CompiledClass code) {
        Set<String> declared = new HashSet<>();
        ClassReader reader = new ClassReader(code.bytes());
        reader.accept(
                new ClassVisitor(Opcodes.ASM9) {
                    @Override
                    public FieldVisitor visitField(
                            int access, String name, String type, String signature, Object value) {
                        declared.add(name + type);
                        return null;
                    }

                    @Override
                    public MethodVisitor visitMethod(
                            int access, String name, String type, String signature, String[] of) {
                        declared.add(name + type);
                        return null;
                    }
                },
                ClassReader.SKIP_CODE);
        List<String> above = new ArrayList<>(List.of(reader.getInterfaces()));
        above.add(reader.getSuperName());
        return new SnippetType(above, declared);
    }
}
