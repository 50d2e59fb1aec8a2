package coldwright.terminal;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.print.KitList;
import coldwright.print.PaperSize;
import coldwright.print.PdfWriter;
import coldwright.terminal.console.ExitCode;
import coldwright.terminal.console.TerminalScreen;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

/** {@code kit LESSON… --learners N}. */
@Command(name = "kit")
final class KitCommand implements Callable<Integer> {
    private final TerminalScreen screen;
    private final LessonFolder courseLessons;

    @Parameters(paramLabel = "LESSON", arity = "1..*", descriptionKey = "lessons")
    private List<String> words;

    @Option(names = "--learners", required = true, paramLabel = "NUMBER")
    private int learners;

    @Option(names = "-o", paramLabel = "FILE")
    private Path file;

    @Option(names = "--replace", descriptionKey = "coldwright.handout.replace")
    private boolean replace;

    KitCommand(TerminalScreen screen, LessonFolder shelf) {
        this.screen = screen;
        this.courseLessons = shelf;
    }

    @Override
    public Integer call() {
        List<Lesson> lessons =
                words.stream()
                        .flatMap(word -> LessonSelection.lessons(word, courseLessons).stream())
                        .toList();
        KitList kit = new KitList(lessons, learners);
        if (file == null) {
            kit.plain().forEach(screen::say);
            return ExitCode.DONE;
        }
        boolean pdf = PrintFile.isPdf(file);
        if (!PrintFile.mayWrite(List.of(file), "-o", replace, screen)) {
            return ExitCode.FAILED;
        }
        String html = kit.html(PaperSize.A4);
        byte[] bytes = pdf ? PdfWriter.of(html) : html.getBytes(StandardCharsets.UTF_8);
        return PrintFile.write(file, bytes, file.toString(), screen);
    }
}
