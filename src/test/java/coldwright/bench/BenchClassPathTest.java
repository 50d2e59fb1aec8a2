package coldwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.process.LaunchSettings;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;

/** What snippets may use, however the program is started. */
final class BenchClassPathTest {
    @Test
    void holdsThisProgramAndNoWindow() {
        List<Path> paths = BenchClassPath.ofThisProgram();
        assertEquals(LaunchSettings.home(Bench.class), paths.get(0));
        for (String library : List.of("hipparchus-core", "csv", "commons-io", "commons-codec")) {
            assertTrue(paths.stream().anyMatch(path -> path.toString().contains(library)));
        }
        assertTrue(paths.stream().noneMatch(path -> path.toString().contains("javafx")));
    }

    @Test
    void snippetsRunFromAJarInAFolderWithSpacesAndUmlauts(@TempDir Path folder) throws IOException {
        Path home = LaunchSettings.home(Bench.class);
        Path jar = Files.createDirectories(folder.resolve("Kühle Küche")).resolve("all of it.jar");
        try (OutputStream file = Files.newOutputStream(jar);
                JarOutputStream out = new JarOutputStream(file);
                Stream<Path> classes = Files.walk(home.resolve("coldwright/figure"))) {
            for (Path one : classes.filter(Files::isRegularFile).toList()) {
                out.putNextEntry(new JarEntry(home.relativize(one).toString().replace('\\', '/')));
                Files.copy(one, out);
            }
        }
        BenchSettings settings = BenchSettings.usual(List.of(jar), Benches.IMPORTS);
        try (Bench bench = Bench.open(settings)) {
            FinishedRun run = Benches.run(bench, List.of(), "Figure.of(\"from a jar\")");
            assertEquals(1, run.figures().size(), run.outcome().toString());
        }
    }
}
