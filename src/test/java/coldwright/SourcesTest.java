package coldwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Habits that hold for every source file, whatever package it stands in. */
class SourcesTest {
    private static final int MOST_LINES = 400;
    private static final int FEWEST_FILES = 100;
    private static final String ZERO_CELSIUS_FILE =
            "src/main/java/coldwright/science/Temperature.java";

    /** 0 °C in K, and the slips that look like it. */
    private static final Pattern ZERO_CELSIUS = Pattern.compile("\\b27[23]\\.1");

    private static final Pattern POOR_NAME =
            Pattern.compile(
                    ".*/(util|utils|common|helper|helpers|impl|misc)/.*"
                            + "|.*/(Abstract\\w*|\\w*(Manager|Helper|Utils?|Impl))\\.java");

    private static Map<String, String> sources() throws IOException {
        Map<String, String> texts = new TreeMap<>();
        for (String root : List.of("src/main/java", "src/test/java")) {
            try (Stream<Path> files = Files.walk(Path.of(root))) {
                for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                    texts.put(
                            file.toString().replace('\\', '/'),
                            Files.readString(file, StandardCharsets.UTF_8));
                }
            }
        }
        assertTrue(texts.size() >= FEWEST_FILES, "only " + texts.size() + " files were found");
        return texts;
    }

    private static List<String> filesWith(Predicate<Map.Entry<String, String>> trait)
            throws IOException {
        return sources().entrySet().stream().filter(trait).map(Map.Entry::getKey).toList();
    }

    @Test
    void zeroCelsiusInKelvinStandsInOneFile() throws IOException {
        assertEquals(
                List.of(ZERO_CELSIUS_FILE),
                filesWith(file -> ZERO_CELSIUS.matcher(file.getValue()).find()),
                "everything else asks Temperature, so that a slip can't hide in a second copy");
    }

    @Test
    void noFileIsLongerThanAReaderCanHoldInMind() throws IOException {
        assertEquals(List.of(), filesWith(file -> file.getValue().lines().count() > MOST_LINES));
    }

    @Test
    void everyNameTellsWhatItIs() throws IOException {
        assertEquals(List.of(), filesWith(file -> POOR_NAME.matcher(file.getKey()).matches()));
    }

    @Test
    void everyPackageSaysWhatItHolds() throws IOException {
        List<String> silent = new ArrayList<>();
        Map<String, String> sources = sources();
        for (String file : sources.keySet()) {
            String folder = file.substring(0, file.lastIndexOf('/'));
            boolean root = folder.equals("src/main/java/coldwright");
            boolean main = file.startsWith("src/main/java");
            if (main && !root && !sources.containsKey(folder + "/package-info.java")) {
                silent.add(file);
            }
        }
        assertEquals(List.of(), silent);
    }
}
