package coldwright.terminal;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonShelf;
import coldwright.workbook.DataFolder;
import coldwright.workbook.Workbook;
import coldwright.workbook.work.LessonKey;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

/** {@code walk LESSON [--all] [--teacher] [-o FOLDER]}. */
@Command(
        name = "walk",
        description = {
            "Goes through a lesson here in the terminal: its text, its questions, its snippets and"
                    + " what they give. Figures are written as files and their paths printed."
        },
        exitCodeListHeading = "%nIt ends with%n",
        exitCodeList = {
            "0:the lesson was walked",
            "1:a snippet failed, or the lesson can't be read",
            "2:the command was not understood, or there is no such lesson"
        })
final class WalkCommand implements Callable<Integer> {
    private final Screen screen;
    private final LessonShelf shelf;
    private final DataFolder data;

    @Parameters(
            paramLabel = "LESSON",
            description =
                    "A lesson's number, its name, or a lesson file, a folder or a zip file of lessons.")
    private String words;

    @Option(names = "--all", description = "Don't wait between the steps, and ask nothing.")
    private boolean all;

    @Option(
            names = "--teacher",
            description = "Show the notes for the teacher too; learners don't see them.")
    private boolean teacher;

    @Option(
            names = {"-o", "--figures"},
            paramLabel = "FOLDER",
            description = "Where the figures go; else a new folder among the temporary files.")
    private Path folder;

    @Option(
            names = "--trust",
            description =
                    "Let the snippets of a lesson run that did not come with Coldwright, without"
                            + " asking.")
    private boolean trust;

    WalkCommand(Screen screen, LessonShelf shelf, DataFolder data) {
        this.data = data;
        this.screen = screen;
        this.shelf = shelf;
    }

    @Override
    public Integer call() {
        try {
            List<Lesson> lessons = Packs.lessons(words, shelf);
            int worst = Exit.DONE;
            for (Lesson lesson : lessons) {
                worst = Math.max(worst, walk(lesson, figuresOf(lesson, lessons.size() > 1)));
            }
            return worst;
        } catch (IllegalArgumentException e) {
            screen.complain(e.getMessage());
            return Exit.NOT_UNDERSTOOD;
        }
    }

    private int walk(Lesson lesson, FigureFolder figures) {
        if (lesson.steps().isEmpty() && lesson.opening().isEmpty()) {
            lesson.faults().forEach(fault -> screen.complain(fault.toString()));
            return Exit.FAILED;
        }
        Leave leave = new Leave(screen, shelf);
        boolean may = trust || leave.isOurs(lesson);
        if (all || screen.asker().isEmpty()) {
            Screen silent = screen.withoutAsker();
            if (!may) {
                screen.complain(Leave.refusal(lesson));
                return Exit.FAILED;
            }
            return walk(lesson, figures, silent, WalkWork.none(lesson, silent));
        }
        try (Workbook workbook = Workbook.open(data)) {
            if (!may && !leave.ask(lesson, workbook)) {
                screen.complain(Leave.refusal(lesson));
                return Exit.FAILED;
            }
            return walk(
                    lesson, figures, screen, WalkWork.in(workbook, lesson, keyOf(lesson), screen));
        }
    }

    private LessonKey keyOf(Lesson lesson) {
        String name = lesson.name();
        return shelf.names().contains(name) && shelf.holds(lesson.text())
                ? LessonKey.ofShelf(name)
                : LessonKey.ofFile(Path.of(lesson.file()));
    }

    private FigureFolder figuresOf(Lesson lesson, boolean ofSeveral) {
        String name = lesson.name();
        if (folder == null) {
            return FigureFolder.temporary(name);
        }
        return FigureFolder.at(ofSeveral ? folder.resolve(name) : folder);
    }

    private int walk(Lesson lesson, FigureFolder figures, Screen on, WalkWork work) {
        try (Runs runs = new Runs(Runs.PATIENCE)) {
            Walk walk = new Walk(lesson, runs, on, figures, work, teacher);
            return walk.go(on.asker().isPresent()) == 0 ? Exit.DONE : Exit.FAILED;
        }
    }
}
