package coldwright.terminal.console;

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
 * Where a command writes to and asks.
 *
 * @param out takes what was asked for
 * @param err takes what went wrong
 * @param asker asks whoever sits there; nobody does if the program runs in a pipe or a script
 * @param width how many characters a line of text may have
 */
public record TerminalScreen(PrintStream out, PrintStream err, Optional<Asker> asker, int width) {
    private static final int NARROWEST = 40;
    private static final int WIDEST = 100;

    /** Characters left behind a question. */
    private static final int ROOM_TO_ANSWER = 4;

    /** Asks one question on the console. */
    public interface Asker {
        /**
         * Asks.
         *
         * @param question what stands before the answer
         * @return the line that was typed; empty if there are no more
         */
        Optional<String> ask(String question);
    }

    /** The terminal that this program was started from, written to in UTF-8 whatever its locale. */
    public static TerminalScreen ofThisProcess() {
        PrintStream out = utf8(FileDescriptor.out);
        Optional<Asker> asker = console().map(console -> question -> ask(out, console, question));
        int width =
                asker.isPresent()
                        ? terminalWidth()
                        : CommandLine.Model.UsageMessageSpec.DEFAULT_USAGE_WIDTH;
        return new TerminalScreen(
                out, utf8(FileDescriptor.err), asker, Math.max(NARROWEST, Math.min(WIDEST, width)));
    }

    private static PrintStream utf8(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
    }

    private static Optional<String> ask(PrintStream out, Console console, String question) {
        out.print(question);
        out.flush();
        return Optional.ofNullable(console.readLine());
    }

    private static Optional<Console> console() {
        return Optional.ofNullable(System.console()).filter(TerminalScreen::hasSomebody);
    }

    /** From Java 22 on there may be a console object without anybody at it. */
    private static boolean hasSomebody(Console console) {
        try {
            return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
        } catch (ReflectiveOperationException e) {
            return true;
        }
    }

    private static int terminalWidth() {
        return CommandLine.Model.CommandSpec.create().usageMessage().autoWidth(true).width();
    }

    /** The same, as if nobody sat there. */
    public TerminalScreen withoutAsker() {
        return new TerminalScreen(out, err, Optional.empty(), width);
    }

    /** Writes a line, without anything in it that a terminal would obey. */
    public void say(String text) {
        out.println(plain(text));
    }

    /**
     * Writes a line in a look of its own, where the terminal has colours and nobody forbids them.
     */
    public void say(CommandLine.Help.Ansi.Style look, String text) {
        boolean coloured = asker.isPresent() && CommandLine.Help.Ansi.AUTO.enabled();
        out.println(coloured ? look.on() + plain(text) + look.off() : plain(text));
    }

    /** Writes a paragraph, set to the width. */
    public void printError(String text) {
        PlainProse.wrap(text, width).forEach(this::say);
    }

    /** Writes a paragraph in a look of its own, set to the width. */
    public void printError(CommandLine.Help.Ansi.Style look, String text) {
        PlainProse.wrap(text, width).forEach(line -> say(look, line));
    }

    /**
     * Writes a line that may be too long: what does not fit stands below, as far in as it began.
     */
    public void fold(String line) {
        PlainProse.fold(line, width).forEach(this::say);
    }

    /**
     * Asks whoever sits there; the question is set to the width, with room for a short answer.
     *
     * @param question what to ask, without a space at its end
     * @return the line that was typed; empty if there are no more, or nobody is there
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

    /** Asks a question to be answered with yes or no; anything else, or nobody there, means no. */
    public boolean agrees(String question) {
        return ask(question + " (yes or no):")
                .filter(answer -> answer.strip().toLowerCase(Locale.ROOT).startsWith("y"))
                .isPresent();
    }

    /** Writes a line about what went wrong. */
    public void complain(String text) {
        err.println(plain(text));
    }

    /** Writes a sentence about what went wrong that no program reads, set to the width. */
    public void warn(String text) {
        PlainProse.wrap(text, width).forEach(this::complain);
    }

    /** Whether the terminal's characters are too few for the lines of a plot. */
    public boolean plainPlots() {
        return asker.isPresent()
                && Optional.ofNullable(System.console())
                        .filter(console -> !console.charset().newEncoder().canEncode('█'))
                        .isPresent();
    }

    /** Whether nobody reads any more, as when the output goes to a pipe that was closed. */
    public boolean gone() {
        return out.checkError();
    }

    private static String plain(String text) {
        return text.replaceAll(
                "[\\x00-\\x08\\x0B-\\x1F\\x7F-\\x9F\\u202A-\\u202E\\u2066-\\u2069]", "");
    }
}
