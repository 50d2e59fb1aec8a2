package coldwright.bench.confine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnJre;
import org.junit.jupiter.api.condition.JRE;
import org.junit.jupiter.api.io.TempDir;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** No member of Java that the list allows asks for a file, a socket, a process or a thread. */
@EnabledOnJre(value = JRE.JAVA_17, disabledReason = "later Javas have no security manager")
final class MemberFuzzTest {
    private static final int ROUNDS = Integer.getInteger("fuzz.rounds", 1);

    @TempDir Path folder;

    @Test
    void noneAsksForMoreThanToCalculate() throws Exception {
        File said = folder.resolve("said.txt").toFile();
        Process process =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-Djava.security.manager=allow",
                                "-Dsun.reflect.inflationThreshold=2147483647", // makes no loaders
                                "-Xmx512m",
                                "-cp",
                                System.getProperty("java.class.path"),
                                MemberFuzz.class.getName(),
                                "20",
                                Integer.toString(ROUNDS))
                        .redirectError(ProcessBuilder.Redirect.DISCARD)
                        .redirectOutput(said)
                        .start();
        assertTrue(process.waitFor(30, TimeUnit.MINUTES), "the fuzz hung");
        List<String> lines = Files.readAllLines(said.toPath());
        String last = lines.get(lines.size() - 1);
        assertTrue(last.matches("\\d{4,} members, \\d{4,} calls"), last);
        assertEquals(List.of(), lines.subList(0, lines.size() - 1), last);
    }
}
