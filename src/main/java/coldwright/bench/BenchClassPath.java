package coldwright.bench;

import coldwright.bench.process.LaunchSettings;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.regex.Pattern;

/** Finds what snippets may use: this program's own classes and the libraries of package science. */
public final class BenchClassPath {
    private static final List<String> LIBRARIES =
            List.of("hipparchus", "commons-csv", "commons-io", "commons-codec");
    private static final Pattern SPACES = Pattern.compile("\\s+");

    private BenchClassPath() {}

    /**
     * The class path for snippets, whether the program was started from folders, from jars, or from
     * one jar whose manifest names the others.
     *
     * @return the program's own classes first, then the libraries found
     */
    public static List<Path> ofThisProgram() {
        return of(System.getProperty("java.class.path"), LaunchSettings.home(Bench.class));
    }

    static List<Path> of(String classPath, Path own) {
        Set<Path> all = new LinkedHashSet<>();
        all.add(own.toAbsolutePath().normalize());
        for (String entry : classPath.split(Pattern.quote(File.pathSeparator))) {
            if (!entry.isEmpty()) {
                Path path = Path.of(entry).toAbsolutePath().normalize();
                addLibrary(path, all);
                named(path).forEach(one -> addLibrary(one, all));
            }
        }
        return List.copyOf(all);
    }

    private static void addLibrary(Path path, Set<Path> all) {
        Path file = path.getFileName();
        String name = file == null ? "" : file.toString().toLowerCase(Locale.ROOT);
        if (LIBRARIES.stream().anyMatch(name::startsWith) && Files.exists(path)) {
            all.add(path);
        }
    }

    /** The class path entries in a jar's manifest. */
    private static List<Path> named(Path jar) {
        if (!jar.toString().endsWith(".jar") || !Files.isRegularFile(jar)) {
            return List.of();
        }
        try (JarFile file = new JarFile(jar.toFile())) {
            Manifest manifest = file.getManifest();
            String value =
                    manifest == null
                            ? null
                            : manifest.getMainAttributes().getValue(Attributes.Name.CLASS_PATH);
            if (value == null) {
                return List.of();
            }
            URI place = jar.toUri();
            return SPACES.splitAsStream(value.strip())
                    .filter(one -> !one.isEmpty())
                    .map(one -> Path.of(place.resolve(one)).normalize())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(jar + " can't be read", e);
        }
    }
}
