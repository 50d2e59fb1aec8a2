package coldwright.terminal;

import coldwright.print.Paper;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** The file that something is set for paper in, by its name. */
final class PaperFile {
    private PaperFile() {}

    /**
     * Whether it is to be a PDF.
     *
     * @param file a name that somebody typed
     * @return false for HTML
     * @throws IllegalArgumentException if it is neither, or a folder
     */
    static boolean isPdf(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        if (!name.endsWith(".pdf") && !name.endsWith(".html")) {
            throw new IllegalArgumentException(
                    file + " can't be set for paper; its name must end in .pdf or .html");
        }
        if (Files.isDirectory(file)) {
            throw new IllegalArgumentException(file + " is a folder; name a file in it");
        }
        return name.endsWith(".pdf");
    }

    static Paper paper(String typed) {
        return switch (typed.toLowerCase(Locale.ROOT)) {
            case "a4" -> Paper.A4;
            case "letter" -> Paper.LETTER;
            default ->
                    throw new IllegalArgumentException(
                            "--paper is %s; it must be a4 or letter".formatted(typed));
        };
    }
}
