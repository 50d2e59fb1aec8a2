package coldwright.bench.compile;

import coldwright.bench.remote.ClassCode;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a class file says of itself, as far as the bench asks (Java Virtual Machine Specification,
 * chapter 4).
 *
 * @param name its own name, with slashes
 * @param head access, superclass and interfaces
 * @param fields each as access, name, descriptor
 * @param methods each as access, name, descriptor
 * @param calls every method that its code names: owner with slashes, a dot, name
 * @param reads every field that its code names: owner with slashes, a dot, name
 * @param caught every class that its code catches, with slashes, and {@link #CAUGHT_ANYTHING}
 * @param snippetClasses every class of snippets that it names in any way, with dots
 */
record ClassFile(
        String name,
        String head,
        Set<String> fields,
        Set<String> methods,
        Set<String> calls,
        Set<String> reads,
        Set<String> caught,
        Set<String> snippetClasses) {
    /** Stands for {@code finally} and {@code synchronized}, which catch whatever comes. */
    static final String CAUGHT_ANYTHING = "*";

    /** Reads one. */
    static ClassFile of(ClassCode code) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(code.bytes()))) {
            return read(in);
        } catch (IOException e) {
            throw new UncheckedIOException("the class file of " + code.name() + " is broken", e);
        }
    }

    /**
     * Whether a running Java can exchange this class' bodies for the other's.
     *
     * @param other the same class compiled anew
     * @return true if both declare the same
     */
    boolean sameShapeAs(ClassFile other) {
        return name.equals(other.name)
                && head.equals(other.head)
                && fields.equals(other.fields)
                && methods.equals(other.methods);
    }

    private static ClassFile read(DataInputStream in) throws IOException {
        in.skipNBytes(8);
        ConstantPool pool = ConstantPool.read(in);
        String access = Integer.toHexString(in.readUnsignedShort());
        String name = pool.className(in.readUnsignedShort());
        List<String> head = new ArrayList<>();
        head.add(access);
        int above = in.readUnsignedShort();
        head.add(above == 0 ? "" : pool.className(above));
        int interfaces = in.readUnsignedShort();
        for (int i = 0; i < interfaces; i++) {
            head.add(pool.className(in.readUnsignedShort()));
        }
        Set<String> caught = new TreeSet<>();
        Set<String> fields = readMembers(in, pool, caught);
        Set<String> methods = readMembers(in, pool, caught);
        return new ClassFile(
                name,
                String.join(" ", head),
                fields,
                methods,
                pool.methods(),
                pool.fields(),
                caught,
                pool.snippetClasses());
    }

    private static Set<String> readMembers(
            DataInputStream in, ConstantPool pool, Set<String> caught) throws IOException {
        Set<String> members = new TreeSet<>();
        int count = in.readUnsignedShort();
        for (int i = 0; i < count; i++) {
            String access = Integer.toHexString(in.readUnsignedShort());
            String name = pool.text(in.readUnsignedShort());
            String descriptor = pool.text(in.readUnsignedShort());
            members.add(access + " " + name + " " + descriptor);
            int attributes = in.readUnsignedShort();
            for (int k = 0; k < attributes; k++) {
                boolean code = pool.text(in.readUnsignedShort()).equals("Code");
                byte[] attribute = in.readNBytes(in.readInt());
                if (code) {
                    readCatches(attribute, pool, caught);
                }
            }
        }
        return members;
    }

    private static void readCatches(byte[] code, ConstantPool pool, Set<String> caught)
            throws IOException {
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(code));
        in.skipNBytes(4);
        in.skipNBytes(in.readInt());
        int catches = in.readUnsignedShort();
        for (int i = 0; i < catches; i++) {
            in.skipNBytes(6);
            int type = in.readUnsignedShort();
            caught.add(type == 0 ? CAUGHT_ANYTHING : pool.className(type));
        }
    }
}
