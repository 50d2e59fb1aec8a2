package coldwright.terminal;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.lesson.LearnerCopy;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.print.KitList;
import coldwright.print.PaperSize;
import coldwright.terminal.check.ParallelLessonChecks;
import coldwright.terminal.console.BenchSource;
import coldwright.terminal.console.BlockingBench;
import coldwright.terminal.console.ExitCode;
import coldwright.terminal.console.RunConsent;
import coldwright.terminal.console.TerminalScreen;
import coldwright.terminal.marking.ClassMarking;
import coldwright.terminal.marking.HandInFiles;
import coldwright.terminal.walk.FigureFolder;
import coldwright.terminal.walk.LessonWalk;
import coldwright.terminal.walk.WalkWork;
import coldwright.workbook.DataFolder;
import coldwright.workbook.Workbook;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.work.LessonKey;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** The program without a command, and its commands {@code walk, check, kit, new}. */
@Command(
        name = Terminal.NAME,
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        versionProvider = LessonCommands.Version.class,
        synopsisHeading = "",
        customSynopsis = {"coldwright [COMMAND]", ""})
final class LessonCommands implements Runnable {
    private static final int MOST_SECONDS = 3600;

    /** Time per hand-in: a class of thirty must not wait for one bad file. */
    private static final Duration FOR_HAND_INS = Duration.ofSeconds(10);

    private static final String TEMPLATE = "/coldwright/lesson/template.md";

    private final TerminalScreen screen;
    private final LessonFolder courseLessons;
    private final DataFolder data;
    private final BenchSource benches;

    @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

    LessonCommands(
            TerminalScreen screen,
            LessonFolder courseLessons,
            DataFolder data,
            BenchSource benches) {
        this.screen = screen;
        this.courseLessons = courseLessons;
        this.data = data;
        this.benches = benches;
    }

    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            String own = Terminal.class.getPackage().getImplementationVersion();
            String shown = own == null ? text("version.own-build") : own;
            return new String[] {text("version", shown, System.getProperty("java.version"))};
        }
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    @Command(name = "walk")
    int walk(
            @Mixin LessonSelection selection,
            @Option(names = "--all") boolean all,
            @Option(names = "--teacher") boolean teacher,
            @Option(
                            names = {"-o", "--figures"},
                            paramLabel = "FOLDER")
                    Path folder) {
        List<Lesson> lessons = selection.lessons(courseLessons);
        int worst = ExitCode.DONE;
        for (Lesson lesson : lessons) {
            String name = lesson.name();
            FigureFolder figures =
                    folder == null
                            ? FigureFolder.temporary(name)
                            : FigureFolder.at(lessons.size() > 1 ? folder.resolve(name) : folder);
            TerminalScreen on = all ? screen.withoutAsker() : screen;
            worst = Math.max(worst, walk(lesson, figures, on, selection.trusts(), teacher));
        }
        return worst;
    }

    private int walk(
            Lesson lesson,
            FigureFolder figures,
            TerminalScreen on,
            boolean trust,
            boolean teacher) {
        if (lesson.steps().isEmpty() && lesson.opening().isEmpty()) {
            lesson.faults().forEach(fault -> on.complain(fault.toString()));
            return ExitCode.FAILED;
        }
        if (on.asker().isEmpty()) {
            return walk(lesson, figures, on, WalkWork.none(lesson, on), () -> trust, teacher);
        }
        try (Workbook workbook = Workbook.open(data)) {
            WalkWork work = WalkWork.in(workbook, lesson, keyOf(lesson), on);
            RunConsent consent = new RunConsent(on);
            BooleanSupplier mayGoBeyond = () -> trust || consent.ask(lesson, workbook);
            return walk(lesson, figures, on, work, mayGoBeyond, teacher);
        }
    }

    private int walk(
            Lesson lesson,
            FigureFolder figures,
            TerminalScreen on,
            WalkWork work,
            BooleanSupplier mayGoBeyond,
            boolean teacher) {
        try (BlockingBench runs = new BlockingBench(benches, BlockingBench.PATIENCE, mayGoBeyond)) {
            LessonWalk walk = new LessonWalk(lesson, runs, on, figures, work, teacher);
            return walk.go(on.asker().isPresent()) == 0 ? ExitCode.DONE : ExitCode.FAILED;
        }
    }

    private LessonKey keyOf(Lesson lesson) {
        String name = lesson.name();
        return courseLessons.names().contains(name) && courseLessons.contains(lesson.text())
                ? LessonKey.ofCourse(name)
                : LessonKey.ofFile(Path.of(lesson.file()));
    }

    @Command(name = "check")
    int check(
            @Parameters(paramLabel = "LESSON", arity = "0..*", descriptionKey = "lessons")
                    List<String> words,
            @Option(names = "--seconds", paramLabel = "N") Integer seconds,
            @Option(names = "--table", paramLabel = "FILE.csv") Path table,
            @Option(names = "--brief") boolean brief,
            @Option(names = "--trust", descriptionKey = "trust") boolean trust) {
        if (seconds != null && (seconds < 1 || seconds > MOST_SECONDS)) {
            throw new IllegalArgumentException(text("check.seconds", seconds, MOST_SECONDS));
        }
        List<String> named = words == null ? List.of() : words;
        Optional<Duration> patience = Optional.ofNullable(seconds).map(Duration::ofSeconds);
        if (named.stream().anyMatch(HandInFiles::areMeantBy)) {
            Duration limit = patience.orElse(FOR_HAND_INS);
            Optional<Path> file = Optional.ofNullable(table);
            return new ClassMarking(screen, courseLessons, benches, limit, file, brief, trust)
                    .check(named);
        }
        if (table != null && named.isEmpty()) {
            throw new IllegalArgumentException(text("check.table-without-name", table));
        }
        if (table != null || brief) {
            throw new IllegalArgumentException(text("check.for-hand-ins", HandIn.ENDING));
        }
        Duration limit = patience.orElse(BlockingBench.PATIENCE);
        return ParallelLessonChecks.check(lessons(named), benches, limit, trust, screen);
    }

    /** The lessons named; all that came with the program if none is. */
    private List<Lesson> lessons(List<String> words) {
        List<String> names = words.isEmpty() ? courseLessons.names() : words;
        if (names.isEmpty()) {
            throw new IllegalArgumentException(text("no-lessons", "check"));
        }
        words.forEach(LessonCommands::requireContent);
        return LessonSelection.lessons(names, courseLessons);
    }

    /** A folder may have been meant as one of hand-ins. */
    private static void requireContent(String word) {
        String[] lessons = new File(word).list((in, name) -> name.endsWith(".md"));
        if (lessons != null && lessons.length == 0) {
            throw new IllegalArgumentException(text("check.empty-folder", word, HandIn.ENDING));
        }
    }

    @Command(name = "kit")
    int kit(
            @Parameters(paramLabel = "LESSON", arity = "1..*", descriptionKey = "lessons")
                    List<String> words,
            @Option(names = "--learners", required = true, paramLabel = "NUMBER") int learners,
            @Option(names = "-o", paramLabel = "FILE") Path file,
            @Option(names = "--replace", descriptionKey = "coldwright.handout.replace")
                    boolean replace) {
        KitList kit = new KitList(LessonSelection.lessons(words, courseLessons), learners);
        if (file == null) {
            kit.plain().forEach(screen::say);
            return ExitCode.DONE;
        }
        PrintFile.isPdf(file);
        return PrintFile.mayWrite(List.of(file), "-o", replace, screen)
                ? PrintFile.write(file, kit.html(PaperSize.A4), screen)
                : ExitCode.FAILED;
    }

    @Command(name = "new")
    int newLesson(
            @Parameters(paramLabel = "FILE", descriptionKey = "file") Path file,
            @Option(names = "--from", paramLabel = "LESSON") String from) {
        if (!file.toString().endsWith(".md")) {
            screen.complain(text("new.ending", file));
            return ExitCode.NOT_UNDERSTOOD;
        }
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            screen.complain(text("new.exists", file));
            return ExitCode.NOT_UNDERSTOOD;
        }
        if (from != null) {
            Lesson lesson = LessonSelection.lessons(List.of(from), courseLessons).get(0);
            byte[] copy = LearnerCopy.of(lesson.text()).getBytes(StandardCharsets.UTF_8);
            return PrintFile.write(file, copy, text("new.copied", file, lesson.title()), screen);
        }
        try (InputStream template = LessonCommands.class.getResourceAsStream(TEMPLATE)) {
            String word = file.toString().contains(" ") ? "\"" + file + "\"" : file.toString();
            String written = text("new.written", file, word);
            return PrintFile.write(file, template.readAllBytes(), written, screen);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
