package coldwright.terminal;

import coldwright.terminal.console.ExitCode;
import coldwright.terminal.console.TerminalScreen;
import coldwright.text.WholeFile;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.concurrent.Callable;

/** {@code new FILE}. */
@Command(
        name = "new",
        description = {
            "Writes a small lesson with one of each kind of block, to change into your own;"
                    + " docs/writing-lessons.md goes on from there."
        },
        exitCodeListHeading = "%nIt ends with%n",
        exitCodeList = {"0:the lesson was written", "2:it was not; a sentence says why"})
final class NewCommand implements Callable<Integer> {
    private static final String TEMPLATE = "/coldwright/lesson/template.md";

    private final TerminalScreen screen;

    @Parameters(paramLabel = "FILE", description = "A name that ends in .md and isn't taken.")
    private Path file;

    NewCommand(TerminalScreen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        if (!file.toString().endsWith(".md")) {
            screen.complain(file + " is no lesson's name; it must end in .md");
            return ExitCode.NOT_UNDERSTOOD;
        }
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            screen.complain(file + " is there already and was left as it is; take another name");
            return ExitCode.NOT_UNDERSTOOD;
        }
        try (InputStream template = NewCommand.class.getResourceAsStream(TEMPLATE)) {
            WholeFile.write(file, template.readAllBytes());
        } catch (IOException e) {
            screen.complain(e.getMessage());
            return ExitCode.NOT_UNDERSTOOD;
        }
        String word = file.toString().contains(" ") ? "\"" + file + "\"" : file.toString();
        screen.say("%s is written; try it with: check %s".formatted(file, word));
        return ExitCode.DONE;
    }
}
