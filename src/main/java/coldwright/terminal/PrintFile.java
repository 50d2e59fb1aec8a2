package coldwright.terminal;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.print.PaperSize;
import coldwright.print.PdfWriter;
import coldwright.terminal.console.ExitCode;
import coldwright.terminal.console.TerminalScreen;
import coldwright.text.WholeFile;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** A file that a command prints to. */
final class PrintFile {
    private PrintFile() {}

    /**
     * Whether the file name is a PDF's and not HTML's.
     *
     * @throws IllegalArgumentException if it is neither PDF nor HTML, or can't be written; checked
     *     before anything is run
     */
    static boolean isPdf(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        if (!name.endsWith(".pdf") && !name.endsWith(".html")) {
            throw new IllegalArgumentException(text("print.ending", file));
        }
        if (Files.isDirectory(file)) {
            throw unwritable(file, WholeFile.Reason.A_FOLDER);
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
        return new IllegalArgumentException(text("print.unwritable", file, why.words()));
    }

    /**
     * Whether the files may be written. An existing file needs {@code replace} or the user's
     * consent, and a script is not asked; false after a message if one must stay.
     */
    static boolean mayWrite(
            List<Path> files, String option, boolean replace, TerminalScreen screen) {
        List<Path> there = files.stream().filter(Files::isRegularFile).toList();
        if (there.isEmpty() || replace || screen.asker().isEmpty()) {
            return true;
        }
        String question =
                there.size() == 1
                        ? text("overwrite.one", there.get(0))
                        : text("overwrite.many", there.get(0), there.size() - 1);
        if (screen.agrees(question)) {
            return true;
        }
        screen.complain(text("overwrite.refused", there.get(0), option));
        return false;
    }

    /** Writes a page as PDF or HTML, by the file's name. */
    static int write(Path file, String html, TerminalScreen screen) {
        byte[] bytes = isPdf(file) ? PdfWriter.of(html) : html.getBytes(StandardCharsets.UTF_8);
        return write(file, bytes, file.toString(), screen);
    }

    /** Writes a file and says so, or why it can't be written; returns the exit code. */
    static int write(Path file, byte[] bytes, String words, TerminalScreen screen) {
        try {
            WholeFile.write(file, bytes);
        } catch (WholeFile.UnwrittenException e) {
            screen.complain(e.getMessage());
            return ExitCode.NOT_UNDERSTOOD;
        }
        screen.say(words);
        return ExitCode.DONE;
    }

    static PaperSize paper(String typed) {
        return switch (typed.toLowerCase(Locale.ROOT)) {
            case "a4" -> PaperSize.A4;
            case "letter" -> PaperSize.LETTER;
            default -> throw new IllegalArgumentException(text("print.paper", typed));
        };
    }
}
