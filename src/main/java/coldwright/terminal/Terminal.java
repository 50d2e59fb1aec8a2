package coldwright.terminal;

import coldwright.lesson.LessonFolder;
import coldwright.terminal.console.CrashHandler;
import coldwright.terminal.console.ExitCode;
import coldwright.terminal.console.TerminalScreen;
import coldwright.text.NearestWord;
import coldwright.workbook.DataFolder;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.IVersionProvider;
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
    private static final String NAME = "coldwright";

    private final TerminalScreen screen;
    private final LessonFolder courseLessons;
    private final DataFolder data;

    Terminal(TerminalScreen screen, LessonFolder shelf, DataFolder data) {
        this.data = data;
        this.screen = screen;
        this.courseLessons = shelf;
    }

    /** The command-line interface on the terminal of this process. */
    public static Terminal ofThisProcess() {
        System.setProperty("java.awt.headless", "true");
        return new Terminal(
                TerminalScreen.ofThisProcess(), LessonFolder.ofThisProgram(), DataFolder.usual());
    }

    /**
     * Runs a command.
     *
     * @param words the command and its arguments, such as {@code walk 1 --all}
     * @return the exit code: 0 done, 1 something in a lesson failed, 2 not understood, 3 a fault of
     *     the program
     */
    public int execute(String... words) {
        CommandLine commands = commands();
        try {
            return commands.execute(words);
        } catch (RuntimeException | Error fault) {
            screen.complain(CrashHandler.sentence(fault));
            return ExitCode.OWN_FAULT;
        } finally {
            commands.getOut().flush();
        }
    }

    /** Whether {@link #execute} knows this command. */
    public boolean knows(String word) {
        return commands().getSubcommands().containsKey(word);
    }

    /**
     * Explains why there is no window and walks through the first lesson without questions. Returns
     * the exit code.
     */
    public int insteadOfWindow(String why) {
        screen.say(why);
        if (courseLessons.names().isEmpty()) {
            screen.complain(
                    "This program came without lessons; give it a lesson file: walk LESSON.");
            return ExitCode.FAILED;
        }
        return execute("walk", "--all", courseLessons.names().get(0));
    }

    private CommandLine commands() {
        CommandLine commands =
                new CommandLine(new Root())
                        .addSubcommand(new WalkCommand(screen, courseLessons, data))
                        .addSubcommand(new CheckCommand(screen, courseLessons))
                        .addSubcommand(new HandoutCommand(screen, courseLessons, data))
                        .addSubcommand(new NewCommand(screen))
                        .addSubcommand(new BatchCommand(screen))
                        .addSubcommand(new BalanceCommand(screen))
                        .addSubcommand(new HelpCommand());
        commands.getSubcommands().values().forEach(Terminal::addHelpOption);
        commands.setOut(new PrintWriter(screen.out(), true, StandardCharsets.UTF_8));
        commands.setErr(new PrintWriter(screen.err(), true, StandardCharsets.UTF_8));
        commands.setExpandAtFiles(false);
        commands.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        commands.setUsageHelpWidth(Math.max(screen.width(), 60));
        commands.setParameterExceptionHandler(this::notUnderstood);
        commands.setExecutionExceptionHandler(this::failed);
        return commands;
    }

    private static void addHelpOption(CommandLine command) {
        if (command.getCommandSpec().findOption("--help") == null) {
            command.getCommandSpec()
                    .addOption(
                            CommandLine.Model.OptionSpec.builder("-h", "--help")
                                    .usageHelp(true)
                                    .description("Says this.")
                                    .build());
        }
    }

    private int notUnderstood(ParameterException e, String[] words) {
        CommandLine at = e.getCommandLine();
        screen.complain(sentence(e, at));
        String asked = at.getCommandName().equals(NAME) ? "help" : "help " + at.getCommandName();
        screen.complain("\"%s\" says what can be written here.".formatted(asked));
        return ExitCode.NOT_UNDERSTOOD;
    }

    private static String sentence(ParameterException e, CommandLine at) {
        if (e instanceof MissingParameterException missing) {
            return "\"%s\" needs %s"
                    .formatted(at.getCommandName(), missing.getMissing().get(0).paramLabel());
        }
        if (!(e instanceof UnmatchedArgumentException unmatched)) {
            return e.getArgSpec() instanceof OptionSpec option && e.getValue() != null
                    ? "\"%s\" does not fit %s, which takes a number or a path"
                            .formatted(e.getValue(), option.longestName())
                    : e.getMessage();
        }
        String word = unmatched.getUnmatched().get(0);
        if (at.getCommandName().equals(NAME) && word.matches(".*\\.(md|batch|zip)")) {
            return word + ": there is no such file; look at its name and folder";
        }
        boolean option = word.startsWith("-");
        List<String> known = new ArrayList<>();
        if (option) {
            at.getCommandSpec().options().forEach(one -> known.addAll(List.of(one.names())));
        } else {
            known.addAll(at.getSubcommands().keySet());
        }
        String what = option ? "option" : "command";
        return known.isEmpty()
                ? "\"%s\" is one word too many".formatted(word)
                : "\"%s\" is no %s%s".formatted(word, what, NearestWord.question(word, known));
    }

    private int failed(Exception e, CommandLine at, ParseResult parsed) {
        screen.complain(CrashHandler.sentence(e));
        return ExitCode.OWN_FAULT;
    }

    @Command(
            name = NAME,
            mixinStandardHelpOptions = true,
            versionProvider = Version.class,
            synopsisHeading = "",
            customSynopsis = {"coldwright [COMMAND]", ""},
            description = {
                "Lessons on the science of ice cream, with live Java to run and change.",
                "Without a command it opens its window; with a lesson, a folder or zip of lessons,",
                "or a batch in place of a command it opens that there.",
                ""
            },
            commandListHeading = "Commands:%n",
            optionListHeading = "Options:%n",
            footer = {"", "\"help COMMAND\" says more on one of them."})
    private static final class Root implements Runnable {
        @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

        @Override
        public void run() {
            spec.commandLine().usage(spec.commandLine().getOut());
        }
    }

    private static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            String own = Terminal.class.getPackage().getImplementationVersion();
            return new String[] {
                "Coldwright %s, on Java %s"
                        .formatted(
                                own == null ? "as built" : own, System.getProperty("java.version"))
            };
        }
    }
}
