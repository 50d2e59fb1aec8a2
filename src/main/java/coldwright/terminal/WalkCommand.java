package coldwright.terminal;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.terminal.console.BlockingBench;
import coldwright.terminal.console.ExitCode;
import coldwright.terminal.console.RunConsent;
import coldwright.terminal.console.TerminalScreen;
import coldwright.terminal.walk.FigureFolder;
import coldwright.terminal.walk.LessonWalk;
import coldwright.terminal.walk.WalkWork;
import coldwright.workbook.DataFolder;
import coldwright.workbook.Workbook;
import coldwright.workbook.work.LessonKey;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

/** {@code walk LESSON [--all] [--teacher] [-o FOLDER]}. */
@Command(name = "walk")
final class WalkCommand implements Callable<Integer> {
    private final TerminalScreen screen;
    private final LessonFolder courseLessons;
    private final DataFolder data;

    @Mixin private LessonSelection selection;

    @Option(names = "--all")
    private boolean all;

    @Option(names = "--teacher")
    private boolean teacher;

    @Option(
            names = {"-o", "--figures"},
            paramLabel = "FOLDER")
    private Path folder;

    WalkCommand(TerminalScreen screen, LessonFolder shelf, DataFolder data) {
        this.data = data;
        this.screen = screen;
        this.courseLessons = shelf;
    }

    @Override
    public Integer call() {
        List<Lesson> lessons = selection.lessons(courseLessons);
        int worst = ExitCode.DONE;
        for (Lesson lesson : lessons) {
            worst = Math.max(worst, walk(lesson, figuresOf(lesson, lessons.size() > 1)));
        }
        return worst;
    }

    private int walk(Lesson lesson, FigureFolder figures) {
        if (lesson.steps().isEmpty() && lesson.opening().isEmpty()) {
            lesson.faults().forEach(fault -> screen.complain(fault.toString()));
            return ExitCode.FAILED;
        }
        RunConsent consent = new RunConsent(screen, courseLessons);
        boolean trusted = selection.trusts() || consent.isOurs(lesson);
        if (all || screen.asker().isEmpty()) {
            TerminalScreen silent = screen.withoutAsker();
            return trusted || consent.refuse(lesson.file())
                    ? walk(lesson, figures, silent, WalkWork.none(lesson, silent))
                    : ExitCode.FAILED;
        }
        try (Workbook workbook = Workbook.open(data)) {
            if (!trusted && !consent.mayRun(lesson, workbook)) {
                return ExitCode.FAILED;
            }
            return walk(
                    lesson, figures, screen, WalkWork.in(workbook, lesson, keyOf(lesson), screen));
        }
    }

    private LessonKey keyOf(Lesson lesson) {
        String name = lesson.name();
        return courseLessons.names().contains(name) && courseLessons.contains(lesson.text())
                ? LessonKey.ofCourse(name)
                : LessonKey.ofFile(Path.of(lesson.file()));
    }

    private FigureFolder figuresOf(Lesson lesson, boolean ofSeveral) {
        String name = lesson.name();
        if (folder == null) {
            return FigureFolder.temporary(name);
        }
        return FigureFolder.at(ofSeveral ? folder.resolve(name) : folder);
    }

    private int walk(Lesson lesson, FigureFolder figures, TerminalScreen on, WalkWork work) {
        try (BlockingBench runs = new BlockingBench(BlockingBench.PATIENCE)) {
            LessonWalk walk = new LessonWalk(lesson, runs, on, figures, work, teacher);
            return walk.go(on.asker().isPresent()) == 0 ? ExitCode.DONE : ExitCode.FAILED;
        }
    }
}
