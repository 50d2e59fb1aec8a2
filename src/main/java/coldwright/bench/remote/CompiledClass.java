package coldwright.bench.remote;

import java.util.Arrays;

/**
 * A compiled class. Treat the bytes as immutable: they aren't copied.
 *
 * @param name binary name, with dots
 * @param bytes the class file
 */
public record CompiledClass(String name, byte[] bytes) {
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
}
