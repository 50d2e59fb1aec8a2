package coldwright.paint.style;

import coldwright.text.TemporaryFolders;

import java.awt.Font;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The program's own fonts in place of the system's. On a Linux without any font, such as a bare
 * container, AWT and JavaFX can't even use a font that a program brings along.
 */
public final class BundledFonts {
    private static final String FONT = "Lato-Regular.ttf";
    private static final Path CONFIGURATION = Path.of("/etc/fonts/fonts.conf");
    private static final List<Path> FOLDERS =
            List.of(
                    Path.of("/usr/share/fonts"),
                    Path.of("/usr/local/share/fonts"),
                    Path.of(System.getProperty("user.home", ""), ".local/share/fonts"));
    private static final System.Logger LOGGER = System.getLogger("coldwright.paint");

    private BundledFonts() {}

    /**
     * Gives the toolkits a font if the system has none. Must be called before a toolkit starts. It
     * looks into the usual folders first, because starting AWT takes some tenths of a second.
     */
    public static void useIfMissing() {
        boolean usual = System.getenv("FONTCONFIG_FILE") == null && Files.exists(CONFIGURATION);
        if (!usual || FOLDERS.stream().noneMatch(BundledFonts::hasFonts)) {
            useIfAwtFails();
        }
    }

    /** The same for AWT alone, which is asked directly. */
    public static synchronized void useIfAwtFails() {
        if (!System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("linux")
                || System.getProperty("sun.awt.fontconfig") != null) {
            return;
        }
        try {
            new Font(Font.SANS_SERIF, Font.PLAIN, 12).getFamily();
        } catch (RuntimeException | InternalError e) {
            LOGGER.log(System.Logger.Level.DEBUG, "the system has no fonts", e);
            use();
        }
    }

    private static boolean hasFonts(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.anyMatch(file -> file.toString().matches(".*\\.(ttf|ttc|otf|pfb)"));
        } catch (IOException | RuntimeException e) {
            return false;
        }
    }

    private static void use() {
        try (InputStream font =
                BundledFonts.class.getResourceAsStream("/coldwright/fonts/" + FONT)) {
            Path folder = TemporaryFolders.create("fonts");
            folder.toFile().deleteOnExit();
            write(folder.resolve(FONT), font.readAllBytes());
            Path awt = folder.resolve("fontconfig.properties");
            write(awt, awt(folder.resolve(FONT)).getBytes(StandardCharsets.UTF_8));
            byte[] logical = javafx().getBytes(StandardCharsets.UTF_8);
            write(folder.resolve("logicalfonts.properties"), logical);
            String all =
                    "maxFont=0\nfamily.0=Lato\nfont.0=Lato Regular\nfile.0=%s\n".formatted(FONT);
            write(folder.resolve("allfonts.properties"), all.getBytes(StandardCharsets.UTF_8));
            System.setProperty("sun.awt.fontconfig", awt.toString());
            System.setProperty("prism.useFontConfig", "false");
            System.setProperty("prism.embeddedfonts", "true");
            System.setProperty("prism.fontdir", folder.toString());
        } catch (IOException e) {
            LOGGER.log(System.Logger.Level.WARNING, "the fonts can't be written", e);
        }
    }

    private static void write(Path file, byte[] content) throws IOException {
        Files.write(file, content);
        file.toFile().deleteOnExit();
    }

    /** The font for every logical font of AWT, in the form of the JDK's fontconfig.properties. */
    private static String awt(Path file) {
        return "version=1\nsequence.allfonts=latin-1\n"
                + forAll(
                        List.of("dialog", "dialoginput", "serif", "sansserif", "monospaced"),
                        List.of("plain", "bold", "italic", "bolditalic"),
                        "%1$s.%2$s.latin-1=-coldwright-lato\n")
                + "filename.-coldwright-lato=%s\n".formatted(file);
    }

    /** The font for every logical font of JavaFX, in the form of its logicalfonts.properties. */
    private static String javafx() {
        return forAll(
                List.of("sans", "serif", "monospace"),
                List.of("regular", "bold", "italic", "bolditalic"),
                "%1$s.%2$s.0.font=Lato Regular\n%1$s.%2$s.0.file=" + FONT + "\n");
    }

    private static String forAll(List<String> names, List<String> styles, String line) {
        return names.stream()
                .flatMap(name -> styles.stream().map(style -> line.formatted(name, style)))
                .collect(Collectors.joining());
    }
}
