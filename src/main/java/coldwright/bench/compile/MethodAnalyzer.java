package coldwright.bench.compile;

import coldwright.bench.compile.SnippetClassFile.FieldAccess;

import org.objectweb.asm.ConstantDynamic;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

import java.util.List;
import java.util.Set;

/** Records the methods, static fields and caught exceptions in a method's code. */
final class MethodAnalyzer extends MethodVisitor {
    private final String method;
    private final Set<String> calls;
    private final Set<String> reads;
    private final List<FieldAccess> touches;
    private final Set<String> caught;

    MethodAnalyzer(
            String method,
            Set<String> calls,
            Set<String> reads,
            List<FieldAccess> touches,
            Set<String> caught) {
        super(Opcodes.ASM9);
        this.method = method;
        this.calls = calls;
        this.reads = reads;
        this.touches = touches;
        this.caught = caught;
    }

    @Override
    public void visitMethodInsn(
            int opcode, String owner, String name, String descriptor, boolean ofInterface) {
        calls.add(owner + "." + name);
    }

    @Override
    public void visitFieldInsn(int opcode, String owner, String name, String descriptor) {
        reads.add(owner + "." + name);
        if (opcode == Opcodes.GETSTATIC || opcode == Opcodes.PUTSTATIC) {
            boolean write = opcode == Opcodes.PUTSTATIC;
            touches.add(new FieldAccess(method, owner, name, descriptor, write));
        }
    }

    @Override
    public void visitInvokeDynamicInsn(
            String name, String descriptor, Handle bootstrap, Object... arguments) {
        note(bootstrap);
        for (Object argument : arguments) {
            visitLdcInsn(argument);
        }
    }

    @Override
    public void visitLdcInsn(Object constant) {
        if (constant instanceof Handle handle) {
            note(handle);
        } else if (constant instanceof ConstantDynamic dynamic) {
            note(dynamic.getBootstrapMethod());
            for (int i = 0; i < dynamic.getBootstrapMethodArgumentCount(); i++) {
                visitLdcInsn(dynamic.getBootstrapMethodArgument(i));
            }
        }
    }

    private void note(Handle handle) {
        switch (handle.getTag()) {
            case Opcodes.H_GETFIELD, Opcodes.H_PUTFIELD ->
                    visitFieldInsn(Opcodes.GETFIELD, handle.getOwner(), handle.getName(), "");
            case Opcodes.H_GETSTATIC ->
                    visitFieldInsn(
                            Opcodes.GETSTATIC,
                            handle.getOwner(),
                            handle.getName(),
                            handle.getDesc());
            case Opcodes.H_PUTSTATIC ->
                    visitFieldInsn(
                            Opcodes.PUTSTATIC,
                            handle.getOwner(),
                            handle.getName(),
                            handle.getDesc());
            default -> calls.add(handle.getOwner() + "." + handle.getName());
        }
    }

    @Override
    public void visitTryCatchBlock(Label start, Label end, Label handler, String type) {
        caught.add(type == null ? SnippetClassFile.CAUGHT_ANYTHING : type);
    }
}
