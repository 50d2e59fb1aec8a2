package coldwright.bench;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;

/**
 * What a bench is given and where it stops.
 *
 * @param classPath what snippets may use
 * @param imports import declarations that each snippet may rely on, such as {@code import
 *     java.util.*;}
 * @param heapMb heap limit of the bench's process, MB, 32 or more
 * @param printedLimit most characters kept of what one run prints
 * @param figureLimit most figures kept of one run
 * @param pointLimit most points kept of one figure
 * @param stopPatience how long a stop may take before the process is ended
 */
public record BenchSettings(
        List<Path> classPath,
        List<String> imports,
        int heapMb,
        int printedLimit,
        int figureLimit,
        int pointLimit,
        Duration stopPatience) {
    /** Checks and copies what is given. */
    public BenchSettings {
        classPath = List.copyOf(classPath);
        imports = List.copyOf(imports);
        if (heapMb < 32) {
            throw new IllegalArgumentException("heapMb is " + heapMb + "; it must be 32 or more");
        }
    }

    /**
     * The usual limits.
     *
     * @param classPath what snippets may use
     * @param imports import declarations for each snippet
     * @return settings with 256 MB of heap, 100,000 characters, 20 figures of 100,000 points
     */
    public static BenchSettings usual(List<Path> classPath, List<String> imports) {
        return new BenchSettings(
                classPath, imports, 256, 100_000, 20, 100_000, Duration.ofMillis(400));
    }
}
