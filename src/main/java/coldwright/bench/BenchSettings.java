package coldwright.bench;

import java.nio.file.Path;
import java.util.List;

/**
 * Class path, imports and limits of a bench.
 *
 * @param classPath classes that snippets may use
 * @param imports import declarations that each snippet may rely on, such as {@code import
 *     java.util.*;}
 * @param heapMb heap limit of the bench's process, MB, 32 or more
 * @param printedLimit maximum characters kept of one run's output
 * @param figureLimit maximum figures kept of one run
 * @param pointLimit maximum points of one figure
 */
public record BenchSettings(
        List<Path> classPath,
        List<String> imports,
        int heapMb,
        int printedLimit,
        int figureLimit,
        int pointLimit) {
    /** Validates and copies the components. */
    public BenchSettings {
        classPath = List.copyOf(classPath);
        imports = List.copyOf(imports);
        if (heapMb < 32) {
            throw new IllegalArgumentException("heapMb is " + heapMb + "; it must be 32 or more");
        }
    }

    /**
     * Settings with the default limits.
     *
     * @return 256 MB of heap, 100,000 characters, 20 figures of 100,000 points
     */
    public static BenchSettings usual(List<Path> classPath, List<String> imports) {
        return new BenchSettings(classPath, imports, 256, 100_000, 20, 100_000);
    }
}
