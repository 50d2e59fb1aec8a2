package coldwright.terminal;

import static coldwright.terminal.console.ConsoleText.text;

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
@Command(name = "new")
final class NewCommand implements Callable<Integer> {
    private static final String TEMPLATE = "/coldwright/lesson/template.md";

    private final TerminalScreen screen;

    @Parameters(paramLabel = "FILE", descriptionKey = "file")
    private Path file;

    NewCommand(TerminalScreen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        if (!file.toString().endsWith(".md")) {
            screen.complain(text("new.ending", file));
            return ExitCode.NOT_UNDERSTOOD;
        }
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            screen.complain(text("new.exists", file));
            return ExitCode.NOT_UNDERSTOOD;
        }
        try (InputStream template = NewCommand.class.getResourceAsStream(TEMPLATE)) {
            WholeFile.write(file, template.readAllBytes());
        } catch (IOException e) {
            screen.complain(e.getMessage());
            return ExitCode.NOT_UNDERSTOOD;
        }
        String word = file.toString().contains(" ") ? "\"" + file + "\"" : file.toString();
        screen.say(text("new.written", file, word));
        return ExitCode.DONE;
    }
}
