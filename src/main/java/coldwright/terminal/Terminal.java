package coldwright.terminal;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.lesson.LessonFolder;
import coldwright.terminal.console.BenchSource;
import coldwright.terminal.console.CrashHandler;
import coldwright.terminal.console.ExitCode;
import coldwright.terminal.console.TerminalScreen;
import coldwright.text.NearestWord;
import coldwright.words.Words;
import coldwright.workbook.DataFolder;
import coldwright.workbook.Workbook;

import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The command-line interface. */
public final class Terminal {
    static final String NAME = "coldwright";

    private final TerminalScreen screen;
    private final LessonFolder courseLessons;
    private final DataFolder data;
    private final BenchSource benches;

    Terminal(TerminalScreen screen, LessonFolder shelf, DataFolder data, BenchSource benches) {
        this.data = data;
        this.screen = screen;
        this.courseLessons = shelf;
        this.benches = benches;
    }

    /** The command-line interface on the terminal of this process. */
    public static Terminal ofThisProcess() {
        System.setProperty("java.awt.headless", "true");
        DataFolder data = DataFolder.usual();
        Words.show(Workbook.languageIn(data));
        return new Terminal(
                TerminalScreen.ofThisProcess(),
                LessonFolder.ofThisProgram(),
                data,
                BenchSource.NEW);
    }

    /**
     * Runs a command with its arguments, such as {@code walk 1 --all}, and returns the exit code: 0
     * done, 1 something in a lesson failed, 2 not understood, 3 a fault of the program.
     */
    public int execute(String... words) {
        try {
            CommandLine commands = commands();
            int exit = commands.execute(words);
            commands.getOut().flush();
            return screen.lostOutput().map(this::lost).orElse(exit);
        } catch (RuntimeException | Error fault) {
            screen.complain(CrashHandler.sentence(fault));
            return ExitCode.OWN_FAULT;
        }
    }

    private int lost(String why) {
        screen.complain(text("output-lost", why));
        return ExitCode.NOT_UNDERSTOOD;
    }

    /** Whether {@link #execute} knows this command. */
    public boolean knows(String word) {
        return commands().getSubcommands().containsKey(word);
    }

    /** Says why there is no window, walks through the first lesson; returns the exit code. */
    public int insteadOfWindow(String why) {
        screen.say(why);
        if (courseLessons.names().isEmpty()) {
            screen.complain(text("no-lessons", "walk"));
            return ExitCode.FAILED;
        }
        return execute("walk", "--all", courseLessons.names().get(0));
    }

    private CommandLine commands() {
        CommandLine commands =
                new CommandLine(new LessonCommands(screen, courseLessons, data, benches));
        addMethods(commands, "walk", "check");
        commands.addSubcommand(new HandoutCommand(screen, courseLessons, data, benches));
        addMethods(commands, "kit", "newLesson");
        commands.addSubcommand(new BatchCommand(screen))
                .addSubcommand(new BalanceCommand(screen))
                .addSubcommand(new HelpCommand())
                .addSubcommand(new GenerateCompletion());
        commands.getSubcommands()
                .get("generate-completion")
                .getCommandSpec()
                .usageMessage()
                .hidden(true);
        commands.getSubcommands().values().forEach(Terminal::addHelpOption);
        commands.setResourceBundle(Words.of("terminal").bundle(Words.shown()));
        commands.setOut(new PrintWriter(screen.out(), true, StandardCharsets.UTF_8));
        commands.setErr(new PrintWriter(screen.err(), true, StandardCharsets.UTF_8));
        commands.setExpandAtFiles(false);
        commands.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        commands.setUsageHelpWidth(Math.max(screen.width(), 60));
        commands.setParameterExceptionHandler(this::notUnderstood);
        commands.setExecutionExceptionHandler(this::failed);
        return commands;
    }

    private static void addMethods(CommandLine commands, String... names) {
        for (String name : names) {
            CommandLine.getCommandMethods(LessonCommands.class, name)
                    .forEach(method -> commands.addSubcommand(new CommandLine(method)));
        }
    }

    private static void addHelpOption(CommandLine command) {
        if (command.getCommandSpec().findOption("--help") == null) {
            command.getCommandSpec()
                    .addOption(
                            CommandLine.Model.OptionSpec.builder("-h", "--help")
                                    .usageHelp(true)
                                    .descriptionKey("help")
                                    .build());
        }
    }

    private int notUnderstood(ParameterException e, String[] words) {
        CommandLine at = e.getCommandLine();
        screen.complain(sentence(e, at));
        String asked = at.getCommandName().equals(NAME) ? "help" : "help " + at.getCommandName();
        screen.complain(text("usage", asked));
        return ExitCode.NOT_UNDERSTOOD;
    }

    private static String sentence(ParameterException e, CommandLine at) {
        if (e instanceof MissingParameterException missing) {
            return text(
                    "usage.needs", at.getCommandName(), missing.getMissing().get(0).paramLabel());
        }
        if (!(e instanceof UnmatchedArgumentException unmatched)) {
            String value = e.getValue();
            return value == null
                    ? e.getMessage()
                    : LessonSelection.isLost(value)
                            ? LessonSelection.lost(value)
                            : e.getArgSpec() instanceof OptionSpec option
                                    ? text("usage.unfit", value, option.longestName())
                                    : e.getMessage();
        }
        String word = unmatched.getUnmatched().get(0);
        if (at.getCommandName().equals(NAME) && word.matches(".*\\.(md|batch|zip)")) {
            return text("usage.no-file", word);
        }
        boolean option = word.startsWith("-");
        List<String> known = new ArrayList<>();
        if (option) {
            at.getCommandSpec().options().forEach(one -> known.addAll(List.of(one.names())));
        } else {
            known.addAll(at.getSubcommands().keySet());
        }
        return known.isEmpty()
                ? text("usage.too-many", word)
                : NearestWord.to(word, known)
                        .map(near -> text("usage.did-you-mean", word, near))
                        .orElseGet(() -> text(option ? "usage.option" : "usage.command", word));
    }

    private int failed(Exception e, CommandLine at, ParseResult parsed) {
        boolean ofUser = e instanceof IllegalArgumentException;
        screen.complain(ofUser ? e.getMessage() : CrashHandler.sentence(e));
        return ofUser ? ExitCode.NOT_UNDERSTOOD : ExitCode.OWN_FAULT;
    }
}
