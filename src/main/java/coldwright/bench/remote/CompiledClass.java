package coldwright.bench.remote;

import java.util.Arrays;
import java.util.Objects;

/** A compiled class: binary name and bytes. Treat the bytes as immutable. */
public final class CompiledClass {
    private final String name;
    private final byte[] bytes;

    private CompiledClass(String name, byte[] bytes) {
        this.name = Objects.requireNonNull(name, "name");
        this.bytes = bytes;
    }

    /**
     * Wraps a compiled class.
     *
     * @param name binary name with dots
     * @param bytes the class file; not copied
     */
    public static CompiledClass of(String name, byte[] bytes) {
        return new CompiledClass(name, bytes);
    }

    /** The binary name, with dots. */
    public String name() {
        return name;
    }

    /** The class file's bytes, not a copy. */
    public byte[] bytes() {
        return bytes;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CompiledClass that
                && name.equals(that.name)
                && Arrays.equals(bytes, that.bytes);
    }

    @Override
    public int hashCode() {
        return 31 * name.hashCode() + Arrays.hashCode(bytes);
    }

    @Override
    public String toString() {
        return name + " (" + bytes.length + " bytes)";
    }
}
