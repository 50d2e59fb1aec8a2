package coldwright.terminal.console;

import static coldwright.terminal.console.ConsoleText.text;

import picocli.CommandLine;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The terminal of a command: output, errors, questions to the user (empty if the program runs in a
 * pipe or a script), and characters per line.
 */
public record TerminalScreen(PrintStream out, PrintStream err, Optional<Asker> asker, int width) {
    private static final int NARROWEST = 40;
    private static final int WIDEST = 100;

    /** Characters left free after a question. */
    private static final int ROOM_TO_ANSWER = 4;

    /** Asks questions on the console. */
    public interface Asker {
        /** Asks one question; empty at the end of the input. */
        Optional<String> ask(String question);
    }

    /** The terminal of this process, in UTF-8 whatever its locale. */
    public static TerminalScreen ofThisProcess() {
        PrintStream out = new WatchedOutput(new FileOutputStream(FileDescriptor.out));
        Optional<Asker> asker =
                Optional.ofNullable(System.console())
                        .filter(TerminalScreen::hasSomebody)
                        .map(console -> question -> ask(out, console, question));
        PrintStream err =
                new PrintStream(
                        new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        int width =
                asker.isPresent()
                        ? CommandLine.Model.CommandSpec.create()
                                .usageMessage()
                                .autoWidth(true)
                                .width()
                        : CommandLine.Model.UsageMessageSpec.DEFAULT_USAGE_WIDTH;
        return new TerminalScreen(out, err, asker, Math.max(NARROWEST, Math.min(WIDEST, width)));
    }

    private static Optional<String> ask(PrintStream out, Console console, String question) {
        out.print(question);
        out.flush();
        return Optional.ofNullable(console.readLine());
    }

    /** From Java 22 there may be a console object without a user. */
    private static boolean hasSomebody(Console console) {
        try {
            return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
        } catch (ReflectiveOperationException e) {
            return true;
        }
    }

    public TerminalScreen withoutAsker() {
        return new TerminalScreen(out, err, Optional.empty(), width);
    }

    /** Writes a line without its control characters. */
    public void say(String text) {
        out.println(plain(text));
    }

    /** Writes a line in a style, if the terminal has colours and they are allowed. */
    public void say(CommandLine.Help.Ansi.Style look, String text) {
        boolean coloured = asker.isPresent() && CommandLine.Help.Ansi.AUTO.enabled();
        out.println(coloured ? look.on() + plain(text) + look.off() : plain(text));
    }

    /** Writes a paragraph, wrapped to the width. */
    public void paragraph(String text) {
        PlainProse.wrap(text, width).forEach(this::say);
    }

    /** Writes a paragraph in a style, wrapped to the width. */
    public void paragraph(CommandLine.Help.Ansi.Style look, String text) {
        PlainProse.wrap(text, width).forEach(line -> say(look, line));
    }

    /** Writes a line; if it is too long, it continues below with the same indent. */
    public void fold(String line) {
        PlainProse.fold(line, width).forEach(this::say);
    }

    /**
     * Asks the user and returns the typed line; empty at the end of the input or without a user.
     * The question is wrapped, with room for a short answer.
     */
    public Optional<String> ask(String question) {
        return asker.flatMap(
                somebody -> {
                    List<String> lines = PlainProse.wrap(question, width - ROOM_TO_ANSWER);
                    int last = lines.size() - 1;
                    lines.subList(0, last).forEach(this::say);
                    return somebody.ask(plain(lines.get(last)) + " ");
                });
    }

    /** Asks a yes-or-no question until the answer is one of them; none means no. */
    public boolean agrees(String question) {
        while (true) {
            String answer = ask(text("yes-or-no", question)).orElse("").strip();
            String first = answer.toLowerCase(Locale.ROOT);
            boolean yes = first.startsWith("y") || first.startsWith(text("yes"));
            if (yes || answer.isEmpty() || first.startsWith(text("no"))) {
                return yes;
            }
        }
    }

    public void complain(String text) {
        err.println(plain(text));
    }

    /** Writes an error for people, wrapped to the width. */
    public void warn(String text) {
        PlainProse.wrap(text, width).forEach(this::complain);
    }

    /** Whether the terminal lacks the characters for the lines of a plot. */
    public boolean plainPlots() {
        return asker.isPresent()
                && Optional.ofNullable(System.console())
                        .filter(console -> !console.charset().newEncoder().canEncode('█'))
                        .isPresent();
    }

    /** Whether the output is closed, such as a pipe. */
    public boolean gone() {
        return out.checkError();
    }

    /** Why output was lost, in the system's words; empty if none was, or if its reader left. */
    public Optional<String> lostOutput() {
        out.flush();
        return out instanceof WatchedOutput watched ? watched.failure() : Optional.empty();
    }

    private static String plain(String text) {
        return text.replaceAll(
                "[\\x00-\\x08\\x0B-\\x1F\\x7F-\\x9F\\u202A-\\u202E\\u2066-\\u2069]", "");
    }
}
