package coldwright.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.freezing.FreezingCurve;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

import javax.tools.ToolProvider;

/** What the build writes of the Javadoc. */
class WrittenHelpTest {
    private static String written;
    private static HelpIndex index;
    private static Method writer;

    @TempDir static Path folder;

    @BeforeAll
    static void write() throws IOException, ReflectiveOperationException {
        int failed =
                ToolProvider.getSystemJavaCompiler()
                        .run(
                                null,
                                null,
                                null,
                                "-d",
                                folder.toString(),
                                "-sourcepath",
                                "src/main/build",
                                "src/main/build/WriteHelp.java");
        assertEquals(0, failed);
        try (URLClassLoader loader = new URLClassLoader(new URL[] {folder.toUri().toURL()})) {
            writer = loader.loadClass("WriteHelp").getMethod("main", String[].class);
            writer.setAccessible(true);
            written = writeTo("first.tsv");
            assertEquals(written, writeTo("second.tsv"), "the same sources give the same index");
        }
        index = HelpIndex.read(written);
    }

    private static String writeTo(String name) throws IOException, ReflectiveOperationException {
        Path file = folder.resolve("deep").resolve(name);
        String[] arguments = {"src/main/java", "src/main/resources", file.toString()};
        writer.invoke(null, (Object) arguments);
        return Files.readString(file);
    }

    /** What the window shows: the index that the build put on the class path. */
    @Test
    void theBuildWroteTheIndexThatTheProgramReads() throws IOException {
        try (InputStream built = HelpIndex.class.getResourceAsStream("index.tsv")) {
            assertNotNull(built, "the build wrote no index: build with Maven");
            assertEquals(written, new String(built.readAllBytes(), StandardCharsets.UTF_8));
        }
        HelpEntry entry = HelpIndex.ofThisProgram().of("Mix", "massG").get(0);
        assertEquals("massG() → g", entry.signature());
        assertFalse(entry.sentence().isEmpty());
        assertFalse(HelpIndex.ofThisProgram().alone("Mix").get(0).sentence().isEmpty());
    }

    @Test
    void rowsAreSortedAndReadable() {
        List<String> rows = written.lines().toList();
        assertEquals(rows.stream().sorted().toList(), rows);
        assertTrue(rows.size() > 1000, "only %d rows".formatted(rows.size()));
    }

    @Test
    void aMethodHasItsSentenceAndUnits() {
        HelpEntry entry = index.of(FreezingCurve.class.getName(), "icePercentAt").get(0);
        assertEquals("icePercentAt(temperatureC in °C) → %", entry.signature());
        assertEquals("Ice as a share of all water.", entry.sentence());
        assertEquals(List.of("temperatureC: temperature, °C, −60 to 120"), entry.parameters());
        assertEquals(
                "% of the water, 0 to 100; 0 at the initial freezing point and above",
                entry.returns());
    }

    @Test
    void aFunctionThatThePreludeBringsStandsAlone() {
        assertEquals(
                List.of("grams(massG in g, ingredient) → Amount"),
                index.alone("grams").stream().map(HelpEntry::signature).toList());
        assertEquals(List.of(), index.alone("icePercentAt"));
    }

    @Test
    void everyIngredientHasItsPlainName() {
        List<String> silent =
                Arrays.stream(Shelf.class.getFields())
                        .map(field -> field.getName())
                        .filter(name -> !spokenOnShelf(name))
                        .toList();
        assertEquals(List.of(), silent);
        String sucrose = index.of("Shelf", "SUCROSE").get(0).sentence();
        assertTrue(sucrose.startsWith("Sucrose, also called saccharose, caster sugar"), sucrose);
    }

    private static boolean spokenOnShelf(String name) {
        return index.alone(name).stream()
                .anyMatch(
                        entry ->
                                entry.kind() == HelpEntry.Kind.INGREDIENT
                                        && !entry.sentence().isEmpty());
    }

    @Test
    void everyMethodOfAMixHasASentence() {
        List<String> silent =
                Stream.of(Mix.class, FreezingCurve.class)
                        .flatMap(type -> Arrays.stream(type.getDeclaredMethods()))
                        .filter(method -> Modifier.isPublic(method.getModifiers()))
                        .map(Method::getName)
                        .filter(name -> !List.of("equals", "hashCode", "toString").contains(name))
                        .filter(
                                name ->
                                        index.named(name).stream()
                                                .allMatch(entry -> entry.sentence().isEmpty()))
                        .toList();
        assertEquals(List.of(), silent);
    }
}
