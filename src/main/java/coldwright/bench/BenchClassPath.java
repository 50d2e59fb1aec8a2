package coldwright.bench;

import coldwright.bench.process.LaunchSettings;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Finds what snippets may use: this program's own classes and the libraries of package science. */
public final class BenchClassPath {
    /** A class of each library. */
    private static final List<String> LIBRARIES =
            List.of(
                    "org.hipparchus.Field",
                    "org.apache.commons.csv.CSVFormat",
                    "org.apache.commons.io.IOUtils",
                    "org.apache.commons.codec.BinaryDecoder");

    private BenchClassPath() {}

    /**
     * The class path for snippets, however the program was started.
     *
     * @return the program's own classes first, then the libraries found
     */
    public static List<Path> ofThisProgram() {
        List<Path> all = new ArrayList<>();
        all.add(LaunchSettings.home(Bench.class));
        for (String name : LIBRARIES) {
            try {
                ClassLoader loader = Bench.class.getClassLoader();
                all.add(LaunchSettings.home(Class.forName(name, false, loader)));
            } catch (ClassNotFoundException e) {
                // not part of this program
            }
        }
        return all;
    }
}
