package coldwright.bench.process;

import coldwright.bench.remote.BenchMain;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;

/**
 * How a process of the program's own is started: with its own folders, a heap limit, and only those
 * environment variables that Java needs.
 *
 * @param main its main class; its first argument is its folder
 * @param classPath its classes
 * @param heapMb heap limit, MB
 * @param arguments the further arguments
 */
public record LaunchSettings(
        Class<?> main, List<Path> classPath, int heapMb, List<String> arguments) {
    /** Environment variables that Java needs to find its files and read their names. */
    private static final Set<String> KEPT_ENVIRONMENT =
            Set.of("LANG", "LC_ALL", "LC_CTYPE", "SystemRoot", "windir");

    /**
     * Exit status of a process that isn't a bench and whose memory is full; Java's for the heap.
     */
    public static final int OVERLOADED = 3;

    /** Makes defensive copies. */
    public LaunchSettings {
        classPath = List.copyOf(classPath);
        arguments = List.copyOf(arguments);
    }

    /**
     * A bench's process.
     *
     * @param classPath classes that snippets may use
     * @param pointLimit maximum points of a figure
     */
    public static LaunchSettings bench(List<Path> classPath, int heapMb, int pointLimit) {
        Set<Path> all = new LinkedHashSet<>(classPath);
        all.add(home(BenchMain.class));
        return new LaunchSettings(
                BenchMain.class, List.copyOf(all), heapMb, List.of(Integer.toString(pointLimit)));
    }

    /**
     * Starts the process, linked by its standard input and output.
     *
     * @param folder its folder, deleted after it ends
     * @param walled whether the operating system confines it too
     * @throws IOException if it can't be started
     */
    Process start(Path folder, boolean walled) throws IOException {
        Path work = Files.createDirectory(folder.resolve("work"));
        Path temporary = Files.createDirectory(folder.resolve("tmp"));
        List<String> words = new ArrayList<>();
        words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        words.add("-Xmx" + heapMb + "m");
        words.add("-Xshare:auto");
        words.add("-XX:TieredStopAtLevel=1");
        words.add("-XX:+UseSerialGC");
        words.add("-XX:-UsePerfData");
        words.add("-XX:+DisplayVMOutputToStderr");
        words.add("-Xlog:disable");
        words.add("-Djava.awt.headless=true");
        words.add("-Dfile.encoding=UTF-8");
        words.add("-Duser.language=en");
        words.add("-Duser.country=GB");
        words.add("-Duser.home=" + work);
        words.add("-Djava.io.tmpdir=" + temporary);
        words.add(
                main == BenchMain.class
                        ? "-javaagent:" + agent(folder)
                        : "-XX:+ExitOnOutOfMemoryError");
        words.add("-cp");
        words.add(
                classPath.stream()
                        .map(path -> path.toAbsolutePath().toString())
                        .collect(Collectors.joining(File.pathSeparator)));
        words.add(main.getName());
        words.add(folder.toString());
        words.addAll(arguments);

        ProcessBuilder builder =
                new ProcessBuilder(walled ? SystemWall.around(words, folder, classPath) : words);
        builder.directory(work.toFile());
        Map<String, String> environment = builder.environment();
        environment.keySet().retainAll(KEPT_ENVIRONMENT);
        builder.redirectError(ProcessBuilder.Redirect.DISCARD);
        return builder.start();
    }

    /** A jar without classes: it names the class to which Java gives access to loaded classes. */
    private static Path agent(Path folder) throws IOException {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().putValue("Premain-Class", BenchMain.class.getName());
        manifest.getMainAttributes().putValue("Can-Redefine-Classes", "true");
        Path jar = folder.resolve("agent.jar");
        new JarOutputStream(Files.newOutputStream(jar), manifest).close();
        return jar;
    }

    /** The folder or jar that a class of this program was loaded from. */
    public static Path home(Class<?> type) {
        try {
            return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException("no file holds " + type, e);
        }
    }
}
