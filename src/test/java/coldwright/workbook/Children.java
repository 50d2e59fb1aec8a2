package coldwright.workbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Programs of this test's own classes in processes of their own. */
final class Children {
    private Children() {}

    /** Starts a main class; what it complains of goes where this program's complaints go. */
    static Process start(Class<?> program, Path folder) throws IOException {
        return new ProcessBuilder(command(program, folder))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    static List<String> command(Class<?> program, Path folder) {
        return new ArrayList<>(
                List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        program.getName(),
                        folder.toString()));
    }
}
