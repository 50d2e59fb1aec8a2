package coldwright.terminal;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonShelf;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
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
    private static final String TRUST =
            "This lesson did not come with Coldwright. Its snippets are programs: they can read and"
                    + " change your files, use the network and start other programs, as you can."
                    + " Let them run only if you trust who wrote them.";

    private final Screen screen;
    private final LessonShelf shelf;

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

    WalkCommand(Screen screen, LessonShelf shelf) {
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
        if (!lesson.text().isEmpty() && !mayRun(lesson)) {
            return Exit.FAILED;
        }
        return walk(lesson, figures, all ? screen.withoutAsker() : screen, teacher);
    }

    /** A stranger's snippets run only if somebody says so. */
    private boolean mayRun(Lesson lesson) {
        if (trust || shelf.holds(lesson.text())) {
            return true;
        }
        ProseText.wrap(TRUST, screen.width()).forEach(screen::say);
        boolean agreed =
                screen.asker()
                        .filter(asker -> !all)
                        .flatMap(asker -> asker.ask("Let them run? (yes or no): "))
                        .filter(answer -> answer.strip().toLowerCase(Locale.ROOT).startsWith("y"))
                        .isPresent();
        if (!agreed) {
            screen.complain(
                    lesson.file() + ": nothing of it was run; add --trust to let its snippets run");
        }
        return agreed;
    }

    private FigureFolder figuresOf(Lesson lesson, boolean ofSeveral) {
        String name = Path.of(lesson.file()).getFileName().toString().replaceFirst("\\.md$", "");
        if (folder == null) {
            return FigureFolder.temporary(name);
        }
        return FigureFolder.at(ofSeveral ? folder.resolve(name) : folder);
    }

    static int walk(Lesson lesson, FigureFolder figures, Screen screen, boolean forTeacher) {
        if (lesson.steps().isEmpty() && lesson.opening().isEmpty()) {
            lesson.faults().forEach(fault -> screen.complain(fault.toString()));
            return Exit.FAILED;
        }
        try (Runs runs = new Runs(Runs.PATIENCE)) {
            Walk walk = new Walk(lesson, runs, screen, figures, forTeacher);
            int failed = walk.go(screen.asker().isPresent());
            return failed == 0 ? Exit.DONE : Exit.FAILED;
        }
    }
}
