package coldwright.terminal;

import coldwright.print.PaperSize;
import coldwright.terminal.console.TerminalScreen;
import coldwright.text.WholeFile;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** A file that a command prints to. */
final class PrintFile {
    private PrintFile() {}

    /**
     * Whether the file name is a PDF's.
     *
     * @return false for HTML
     * @throws IllegalArgumentException if it is neither PDF nor HTML, or can't be written; checked
     *     before anything is run
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
        Path in = file.toAbsolutePath().getParent();
        if (in == null || !Files.isDirectory(in)) {
            throw unwritable(file, WholeFile.Reason.NO_FOLDER);
        }
        if (!Files.isWritable(in)) {
            throw unwritable(file, WholeFile.Reason.NOT_ALLOWED);
        }
        return name.endsWith(".pdf");
    }

    private static IllegalArgumentException unwritable(Path file, WholeFile.Reason why) {
        return new IllegalArgumentException(file + " can't be written: " + why.words());
    }

    /**
     * Whether the files may be written. An existing file needs {@code replace} or the user's
     * consent; a script is not asked.
     *
     * @return false if a file must stay, after a message
     */
    static boolean mayWrite(
            List<Path> files, String option, boolean replace, TerminalScreen screen) {
        List<Path> there = files.stream().filter(Files::isRegularFile).toList();
        if (there.isEmpty() || replace || screen.asker().isEmpty()) {
            return true;
        }
        String which =
                there.size() == 1
                        ? "%s is there already. Overwrite it?"
                        : "%s and %d more are there already. Overwrite them?";
        if (screen.agrees(which.formatted(there.get(0), there.size() - 1))) {
            return true;
        }
        screen.complain(
                "%s was left as it is; give another name with %s, or add --replace"
                        .formatted(there.get(0), option));
        return false;
    }

    static PaperSize paper(String typed) {
        return switch (typed.toLowerCase(Locale.ROOT)) {
            case "a4" -> PaperSize.A4;
            case "letter" -> PaperSize.LETTER;
            default ->
                    throw new IllegalArgumentException(
                            "--paper is %s; it must be a4 or letter".formatted(typed));
        };
    }
}
