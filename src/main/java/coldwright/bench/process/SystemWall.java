package coldwright.bench.process;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Confinement by the operating system, where it is at hand: bubblewrap on Linux. The process sees
 * Java, its class path and its own folder, and has no network, no other processes and no programs.
 * Never required: where it doesn't work, processes start without it.
 */
public final class SystemWall {
    private static final List<Path> TOOLS =
            List.of(Path.of("/usr/bin/bwrap"), Path.of("/usr/local/bin/bwrap"));

    /** Libraries that Java needs, and where they are found; what is missing is left out. */
    private static final List<String> SYSTEM =
            List.of(
                    "/usr/lib",
                    "/usr/lib64",
                    "/lib",
                    "/lib64",
                    "/etc/ld.so.cache",
                    "/etc/ld.so.conf",
                    "/etc/ld.so.conf.d",
                    "/nix/store",
                    "/gnu/store");

    /** Whether a process has started behind it, or failed to: unknown before the first start. */
    private static volatile boolean proved;

    private static volatile boolean broken = "off".equals(System.getProperty("coldwright.wall"));

    private SystemWall() {}

    /** Whether processes have started behind it. */
    public static boolean stands() {
        return proved && !broken;
    }

    /** Whether to try it. */
    static boolean isAtHand() {
        return !broken && TOOLS.stream().anyMatch(Files::isExecutable);
    }

    /** Notes how a start behind it went; one that worked before isn't given up. */
    static void note(boolean worked) {
        broken |= !worked && !proved;
        proved |= worked;
    }

    /**
     * Puts a command behind the wall.
     *
     * @param command a command that starts Java
     * @param folder the folder that it may write to
     * @param classPath files and folders that it may read
     * @throws IOException if Java's own folders can't be read
     */
    static List<String> around(List<String> command, Path folder, List<Path> classPath)
            throws IOException {
        Path java = Path.of(System.getProperty("java.home"));
        Path settings = java.resolve("conf/security/java.security");
        List<String> words = new ArrayList<>();
        words.add(TOOLS.stream().filter(Files::isExecutable).findFirst().orElseThrow().toString());
        words.addAll(List.of("--unshare-all", "--die-with-parent", "--new-session", "--as-pid-1"));
        words.addAll(List.of("--proc", "/proc", "--dev", "/dev", "--tmpfs", "/tmp"));
        Stream<Path> readable =
                Stream.of(
                                SYSTEM.stream().map(Path::of),
                                Stream.of(java, java.toRealPath()),
                                // some systems keep Java's settings in /etc
                                Files.exists(settings)
                                        ? Stream.of(settings.toRealPath().getParent().getParent())
                                        : Stream.<Path>empty(),
                                classPath.stream().map(Path::toAbsolutePath))
                        .flatMap(paths -> paths);
        readable.map(Path::toString)
                .forEach(path -> words.addAll(List.of("--ro-bind-try", path, path)));
        words.addAll(List.of("--bind", folder.toString(), folder.toString()));
        words.addAll(List.of("--chdir", folder.resolve("work").toString(), "--"));
        words.addAll(command);
        return words;
    }
}
