import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;

/**
 * Lays out a Debian package around the application image and lets {@code dpkg-deb} pack it.
 *
 * <p>It has no scripts: the system's own triggers read the desktop entry, the file types and the
 * manual, so that it installs on a machine without menus and is purged whole. Times of files are
 * kept, because the class archive is valid only for jars that have not changed.
 */
final class MakeDeb {
    private static final String NAME = "coldwright";
    private static final String HOME = "usr/lib/" + NAME;

    /** What JavaFX opens by name, so that no tool finds it; either name of a package is enough. */
    private static final Set<String> OPENED_BY_NAME =
            Set.of("libgtk-3-0 | libgtk-3-0t64", "libgl1", "libxtst6", "libxxf86vm1", "libc6");

    private static final Pattern SHARED_LIBRARY = Pattern.compile("\\s(\\S+) => (/\\S+)");

    /** Libraries of the C library and of the X window system, under the same package everywhere. */
    private static final Pattern EVERYWHERE =
            Pattern.compile(
                    "lib(c|m|dl|rt|pthread|util|nsl|resolv|stdc\\+\\+|gcc_s)\\.so.*|ld-linux.*");

    private static final String DESKTOP_ENTRY =
            """
            [Desktop Entry]
            Type=Application
            Name=Coldwright
            Comment=Run the science of ice cream
            Comment[de]=Die Wissenschaft vom Speiseeis zum Ausprobieren
            Exec=coldwright %f
            Icon=coldwright
            Terminal=false
            Categories=Education;Science;
            MimeType=text/x-coldwright-batch;text/markdown;
            """;

    private static final String FILE_TYPES =
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <mime-info xmlns="http://www.freedesktop.org/standards/shared-mime-info">
              <mime-type type="text/x-coldwright-batch">
                <comment>Batch of ice cream</comment>
                <sub-class-of type="text/plain"/>
                <glob pattern="*.batch"/>
              </mime-type>
            </mime-info>
            """;

    private static final String METAINFO =
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <component type="desktop-application">
              <id>coldwright</id>
              <name>Coldwright</name>
              <summary>Run the science of ice cream</summary>
              <metadata_license>CC0-1.0</metadata_license>
              <project_license>Apache-2.0</project_license>
              <developer id="coldwright"><name>The Coldwright developers</name></developer>
              <description>
                <p>
                  Lessons on the science of ice cream, with short pieces of live Java to change and
                  run, and a calculator for one's own batch: at which temperature it begins to
                  freeze, how much of its water is ice, and what would improve it.
                </p>
              </description>
              <launchable type="desktop-id">coldwright.desktop</launchable>
              <provides><binary>coldwright</binary></provides>
              <content_rating type="oars-1.1"/>
              <releases><release version="%s" date="%s"/></releases>
            </component>
            """;

    private static final String CONTROL =
            """
            Package: coldwright
            Version: %s
            Section: education
            Priority: optional
            Architecture: %s
            Maintainer: The Coldwright developers <coldwright@localhost>
            Installed-Size: %d
            Depends: %s
            Description: run the science of ice cream
             Lessons on emulsions, freezing, churning and crystals, with live Java to change
             and run, and a calculator for a batch of one's own. It has its own Java.
            """;

    private final Path image;
    private final Path tree;
    private final String version;

    private MakeDeb(Path image, Path out, String version) {
        this.image = image;
        this.tree = out.resolve("deb");
        this.version = version;
    }

    /**
     * The package's file.
     *
     * @param image the application image, complete with its class archive
     * @param icon the icon, PNG
     * @param docs the folder with LICENSE, NOTICE and CHANGELOG.md
     * @param out the folder to write into
     */
    static Path make(Path image, Path icon, Path docs, Path out, String version)
            throws IOException, InterruptedException {
        MakeDeb deb = new MakeDeb(image, out, version);
        deb.copyImage();
        deb.describe(icon, docs);
        deb.explain();
        deb.control();
        Path file = out.resolve(NAME + "_" + version + "_" + deb.architecture() + ".deb");
        output(
                "dpkg-deb",
                "--root-owner-group",
                "-Zxz",
                "--build",
                deb.tree.toString(),
                file.toString());
        return file;
    }

    private void copyImage() throws IOException {
        Path home = tree.resolve(HOME);
        try (Stream<Path> all = Files.walk(image)) {
            for (Path from : all.toList()) {
                Path to = home.resolve(image.relativize(from).toString());
                if (Files.isDirectory(from)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(from, to, StandardCopyOption.COPY_ATTRIBUTES);
                }
            }
        }
        Path command = tree.resolve("usr/bin").resolve(NAME);
        Files.createDirectories(command.getParent());
        Files.createSymbolicLink(command, Path.of("../lib/" + NAME + "/bin/Coldwright"));
    }

    private void describe(Path icon, Path docs) throws IOException {
        write("usr/share/applications/coldwright.desktop", DESKTOP_ENTRY);
        write("usr/share/mime/packages/coldwright.xml", FILE_TYPES);
        FileTime built = Files.getLastModifiedTime(image.resolve("lib/app/coldwright.jar"));
        write(
                "usr/share/metainfo/coldwright.metainfo.xml",
                METAINFO.formatted(version, built.toString().substring(0, 10)));
        copy(icon, "usr/share/icons/hicolor/256x256/apps/coldwright.png");
        String notice = Files.readString(docs.resolve("NOTICE"));
        write(
                "usr/share/doc/coldwright/copyright",
                notice
                        + "\nLicensed under the Apache License, Version 2.0: "
                        + "/usr/share/common-licenses/Apache-2.0\n"
                        + "Its own Java, its libraries and fonts have licences of their own: "
                        + "/usr/share/doc/coldwright/third-party.md\n");
        copy(docs.resolve("third-party.md"), "usr/share/doc/coldwright/third-party.md");
        try (Stream<Path> texts = Files.list(docs.resolve("licences"))) {
            for (Path text : texts.toList()) {
                copy(text, "usr/share/doc/coldwright/licences/" + text.getFileName());
            }
        }
        zipped(
                "usr/share/doc/coldwright/changelog.gz",
                Files.readString(docs.resolve("CHANGELOG.md")));
    }

    /** Manual and completion, from what the program itself says. */
    private void explain() throws IOException, InterruptedException {
        String program = tree.resolve("usr/bin").resolve(NAME).toString();
        String completion = output(program, "generate-completion");
        write("usr/share/bash-completion/completions/coldwright", completion);
        write(
                "usr/share/zsh/vendor-completions/_coldwright",
                "#compdef coldwright\nautoload -U +X bashcompinit && bashcompinit\n"
                        + "source /usr/share/bash-completion/completions/coldwright\n");
        String help = output(program, "help");
        StringBuilder page =
                new StringBuilder(".TH COLDWRIGHT 1 \"\" \"Coldwright " + version + "\"\n")
                        .append(".SH NAME\ncoldwright \\- run the science of ice cream\n")
                        .append(".SH SYNOPSIS\n.nf\n")
                        .append(roff(help))
                        .append(".fi\n.SH COMMANDS\n");
        Matcher commands =
                Pattern.compile("(?m)^  (\\w+)  ")
                        .matcher(help.substring(help.indexOf("Commands:")));
        while (commands.find()) {
            String command = commands.group(1);
            page.append(".SS ").append(command).append("\n.nf\n");
            page.append(roff(output(program, "help", command))).append(".fi\n");
        }
        zipped("usr/share/man/man1/coldwright.1.gz", page.toString());
    }

    private static String roff(String text) {
        return text.replace("\\", "\\e").replace("-", "\\-").replaceAll("(?m)^([.'])", "\\\\&$1");
    }

    private void control() throws IOException, InterruptedException {
        long kilobytes;
        try (Stream<Path> all = Files.walk(tree)) {
            kilobytes =
                    all.filter(Files::isRegularFile).mapToLong(f -> f.toFile().length()).sum()
                            / 1024;
        }
        Set<String> needs = new TreeSet<>(OPENED_BY_NAME);
        needs.addAll(linked());
        write(
                "DEBIAN/control",
                CONTROL.formatted(version, architecture(), kilobytes, String.join(", ", needs)));
    }

    /** Packages of the libraries that the image links and doesn't have itself. */
    private Set<String> linked() throws IOException, InterruptedException {
        Set<String> files = new TreeSet<>();
        try (Stream<Path> all = Files.walk(image)) {
            for (Path library :
                    all.filter(f -> f.toString().matches(".*\\.so|.*/bin/\\w+")).toList()) {
                Matcher needed = SHARED_LIBRARY.matcher(output("ldd", library.toString()));
                while (needed.find()) {
                    boolean own = Path.of(needed.group(2)).startsWith(image.toAbsolutePath());
                    if (!own && !EVERYWHERE.matcher(needed.group(1)).matches()) {
                        files.add(needed.group(1));
                    }
                }
            }
        }
        Set<String> packages = new TreeSet<>();
        for (String file : files) {
            String owner = output("dpkg-query", "-S", "*/" + file);
            packages.add(owner.substring(0, owner.indexOf(':')));
        }
        if (packages.stream().anyMatch(one -> !one.matches("zlib1g|lib(x|xcb|xau|gtk).*"))) {
            System.out.println(
                    "this JDK uses libraries of this system, so the package may only fit this system: "
                            + packages);
        }
        return packages;
    }

    private String architecture() throws IOException, InterruptedException {
        return output("dpkg", "--print-architecture").strip();
    }

    private void write(String to, String text) throws IOException {
        Path file = tree.resolve(to);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
    }

    private void copy(Path from, String to) throws IOException {
        Path file = tree.resolve(to);
        Files.createDirectories(file.getParent());
        Files.copy(from, file);
    }

    private void zipped(String to, String text) throws IOException {
        Path file = tree.resolve(to);
        Files.createDirectories(file.getParent());
        try (OutputStream packed = new GZIPOutputStream(Files.newOutputStream(file))) {
            packed.write(text.getBytes(StandardCharsets.UTF_8));
        }
    }

    private static String output(String... words) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(List.of(words));
        builder.environment().put("LC_ALL", "C.UTF-8");
        Process process = builder.redirectError(ProcessBuilder.Redirect.DISCARD).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0 && !words[0].equals("ldd")) {
            throw new IOException(String.join(" ", words) + " failed");
        }
        return said;
    }
}
