import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/**
 * Makes the application image and, if the platform's tools are available, an installer.
 *
 * <p>Arguments: the program folder, the icon (PNG), the folder of the documents, the folder to
 * write, the version. The runtime includes {@code java} because every bench is a process of its
 * own.
 */
public final class MakeImage {
    private static final String NAME = "Coldwright";
    private static final String ABOUT = "Run the science of ice cream";

    /** Modules of the program, its libraries and its benches; jdeps lists the first line. */
    private static final String MODULES =
            "java.base,java.desktop,java.instrument,java.sql,jdk.jfr,jdk.jshell,jdk.unsupported,jdk.xml.dom"
                    + ",jdk.compiler,jdk.localedata,jdk.charsets,jdk.zipfs,jdk.crypto.ec,java.logging";

    private static final int REHEARSAL_S = 15;

    private final Path program;
    private final Path out;
    private final String version;
    private final Path icon;
    private final Path docs;
    private final boolean windows = os().contains("win");
    private final boolean mac = os().contains("mac");

    private MakeImage(Path program, Path icon, Path docs, Path out, String version)
            throws IOException {
        this.program = program;
        this.docs = docs;
        this.out = out;
        this.version = version;
        delete(out);
        Files.createDirectories(out);
        this.icon = windows ? IconFile.ico(icon, out) : mac ? IconFile.icns(icon, out) : icon;
    }

    public static void main(String[] words) throws Exception {
        MakeImage make =
                new MakeImage(
                        Path.of(words[0]),
                        Path.of(words[1]),
                        Path.of(words[2]),
                        Path.of(words[3]),
                        words[4]);
        Path runtime = make.runtime();
        Path image = make.image(runtime);
        delete(runtime);
        make.rehearse(image);
        make.installers(image);
        make.checksums();
        System.out.printf("image: %s, %d MB%n", image, megabytes(image));
    }

    private static String os() {
        return System.getProperty("os.name").toLowerCase(Locale.ROOT);
    }

    private Path runtime() throws Exception {
        Path runtime = out.resolve("runtime");
        run(
                "jlink",
                List.of(
                        "--add-modules",
                        MODULES,
                        "--strip-java-debug-attributes",
                        "--no-header-files",
                        "--no-man-pages",
                        // Only javac's --release needs it, which the program doesn't use.
                        "--exclude-files=glob:/jdk.compiler/lib/ct.sym",
                        "--compress",
                        newer(21) ? "zip-6" : "2",
                        "--output",
                        runtime.toString()));
        List<String> dump =
                new ArrayList<>(
                        List.of(
                                java(runtime.resolve("bin")).toString(),
                                "-XX:+UseSerialGC",
                                "-Xshare:dump"));
        dump.addAll(forNewerJava());
        process(dump, REHEARSAL_S * 4);
        return runtime;
    }

    private static boolean newer(int feature) {
        return Runtime.version().feature() >= feature;
    }

    private Path java(Path bin) {
        return bin.resolve(windows ? "java.exe" : "java");
    }

    private Path image(Path runtime) throws Exception {
        List<String> words =
                new ArrayList<>(
                        List.of(
                                "--type",
                                "app-image",
                                "--name",
                                NAME,
                                "--description",
                                ABOUT,
                                "--app-version",
                                version,
                                "--input",
                                program.toString(),
                                "--main-jar",
                                "coldwright.jar",
                                "--main-class",
                                "coldwright.Main",
                                "--runtime-image",
                                runtime.toString(),
                                "--icon",
                                icon.toString(),
                                "--dest",
                                out.toString()));
        for (String flag : flags()) {
            words.addAll(List.of("--java-options", flag));
        }
        if (windows) {
            Path terminal = out.resolve("terminal.properties");
            Files.writeString(terminal, "win-console=true\n");
            words.addAll(List.of("--add-launcher", NAME + "-terminal=" + terminal));
        }
        run("jpackage", words);
        return out.resolve(mac ? NAME + ".app" : NAME);
    }

    private static List<String> flags() {
        List<String> flags =
                new ArrayList<>(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx384m"));
        if (newer(19)) {
            flags.addAll(List.of("-XX:SharedArchiveFile=$APPDIR/coldwright.jsa", "-Xlog:disable"));
        }
        flags.addAll(forNewerJava());
        return flags;
    }

    /** The archives are valid only for a Java that is started with the same arguments. */
    private static List<String> forNewerJava() {
        return newer(24)
                ? List.of(
                        "--enable-native-access=ALL-UNNAMED",
                        "--sun-misc-unsafe-memory-access=allow")
                : List.of();
    }

    /**
     * Opens the window once, if there is a display, and saves the loaded classes as an archive.
     * Java before 19 accepts an archive only where it was made, so there it is left out.
     */
    private void rehearse(Path image) throws Exception {
        boolean display = windows || mac || System.getenv("DISPLAY") != null;
        if (!newer(19) || !display) {
            System.out.println(
                    "no class archive: it wants Java 19 or newer and a display; the program starts without");
            return;
        }
        Path app = app(image);
        Path archive = app.resolve("coldwright.jsa");
        Path launcherWords = app.resolve(NAME + ".cfg");
        String usual = Files.readString(launcherWords);
        Files.writeString(
                launcherWords,
                usual.replaceAll(
                                "java-options=-XX:SharedArchiveFile=.*",
                                "java-options=-XX:+RecordDynamicDumpInfo")
                        + "java-options=-Dcoldwright.data="
                        + out.resolve("rehearsal")
                        + "\n");
        Process window =
                new ProcessBuilder(launcher(image).toString())
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
        try {
            TimeUnit.SECONDS.sleep(REHEARSAL_S);
            Path jcmd =
                    Path.of(System.getProperty("java.home"), "bin", windows ? "jcmd.exe" : "jcmd");
            process(
                    List.of(
                            jcmd.toString(),
                            Long.toString(window.pid()),
                            "VM.cds",
                            "dynamic_dump",
                            archive.toString()),
                    REHEARSAL_S * 4);
        } finally {
            window.destroy();
            window.waitFor();
            Files.writeString(launcherWords, usual);
            delete(out.resolve("rehearsal"));
        }
    }

    private Path app(Path image) {
        return mac
                ? image.resolve("Contents/app")
                : windows ? image.resolve("app") : image.resolve("lib/app");
    }

    private Path launcher(Path image) {
        return mac
                ? image.resolve("Contents/MacOS").resolve(NAME)
                : windows ? image.resolve(NAME + ".exe") : image.resolve("bin").resolve(NAME);
    }

    private void installers(Path image) throws Exception {
        List<String> types = new ArrayList<>();
        if (mac) {
            types.add("dmg");
        } else if (windows && (found("wix") || found("candle"))) {
            types.add("msi");
        } else if (!windows && found("rpmbuild")) {
            types.add("rpm");
        }
        boolean deb = !windows && !mac && found("dpkg-deb");
        if (deb) {
            MakeDeb.make(image, icon, docs, out, version);
        } else if (types.isEmpty()) {
            System.out.println(
                    "no installer: this machine has none of the platform's tools; the image needs none");
        }
        for (String type : types) {
            installer(image, type);
        }
    }

    private void installer(Path image, String type) throws IOException {
        Path batches = out.resolve("batch.properties");
        Files.writeString(
                batches,
                "extension=batch\nmime-type=text/x-coldwright-batch\ndescription=Batch of ice cream\nicon="
                        + icon.toString().replace('\\', '/')
                        + "\n",
                StandardCharsets.UTF_8);
        List<String> words =
                new ArrayList<>(
                        List.of(
                                "--type", type,
                                "--name", NAME,
                                "--description", ABOUT,
                                "--app-version", version,
                                "--app-image", image.toString(),
                                "--vendor", NAME,
                                "--license-file", docs.resolve("LICENSE").toString(),
                                "--file-associations", batches.toString(),
                                "--dest", out.toString()));
        if (windows) {
            words.addAll(List.of("--win-menu", "--win-per-user-install", "--win-dir-chooser"));
        } else if (!mac) {
            words.addAll(List.of("--linux-shortcut", "--linux-package-name", "coldwright"));
        }
        run("jpackage", words);
    }

    /** Writes SHA256SUMS beside the installers. */
    private void checksums() throws Exception {
        StringBuilder sums = new StringBuilder();
        try (Stream<Path> made = Files.list(out)) {
            for (Path file :
                    made.filter(one -> one.toString().matches(".*\\.(deb|rpm|msi|dmg)"))
                            .sorted()
                            .toList()) {
                System.out.printf("installer: %s, %d MB%n", file, megabytes(file));
                byte[] sum = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
                sums.append(HexFormat.of().formatHex(sum))
                        .append("  ")
                        .append(file.getFileName())
                        .append('\n');
            }
        }
        if (!sums.isEmpty()) {
            Files.writeString(out.resolve("SHA256SUMS"), sums);
        }
    }

    private static boolean found(String tool) {
        return Stream.of(System.getenv("PATH").split(java.io.File.pathSeparator))
                .anyMatch(
                        folder ->
                                Files.exists(Path.of(folder, tool))
                                        || Files.exists(Path.of(folder, tool + ".exe")));
    }

    private static void run(String tool, List<String> words) {
        ToolProvider found =
                ToolProvider.findFirst(tool)
                        .orElseThrow(
                                () ->
                                        new IllegalStateException(
                                                tool
                                                        + " is missing; build with a whole JDK, not a JRE"));
        if (found.run(System.out, System.err, words.toArray(String[]::new)) != 0) {
            throw new IllegalStateException(tool + " failed; what it said stands above");
        }
    }

    private static void process(List<String> words, int seconds) throws Exception {
        Process process =
                new ProcessBuilder(words)
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
        if (!process.waitFor(seconds, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IllegalStateException(words.get(0) + " took more than " + seconds + " s");
        }
    }

    private static long megabytes(Path path) throws IOException {
        try (Stream<Path> all = Files.walk(path)) {
            return all.filter(Files::isRegularFile).mapToLong(file -> file.toFile().length()).sum()
                    >> 20;
        }
    }

    private static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                    path.toFile().setWritable(true);
                    Files.delete(path);
                }
            }
        }
    }
}
