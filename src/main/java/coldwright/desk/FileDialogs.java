package coldwright.desk;

import coldwright.desk.lesson.HandoutRequest;
import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.messages.Messages;
import coldwright.desk.model.DeskModel;
import coldwright.desk.run.ExceptionText;
import coldwright.print.HandoutEdition;
import coldwright.print.HandoutOptions;
import coldwright.text.WholeFile;
import coldwright.workbook.handin.HandIn;

import javafx.stage.FileChooser;
import javafx.stage.Stage;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Optional;

/** Asks for a file, then opens a lesson from it, or writes a hand-in or a handout to it. */
final class FileDialogs {
    private final Stage stage;
    private final DeskModel desk;
    private final WorkKeeper workKeeper;
    private final HandoutPrinter printer;

    FileDialogs(Stage stage, DeskModel desk, WorkKeeper workKeeper, HandoutPrinter printer) {
        this.stage = stage;
        this.desk = desk;
        this.workKeeper = workKeeper;
        this.printer = printer;
    }

    void handIn(LessonModel lesson, String name) {
        HandIn work = workOf(lesson, name);
        FileChooser chooser = chooser("hand-in.save");
        chooser.setInitialFileName(work.fileName());
        File file = chooser.showSaveDialog(stage);
        if (file != null) {
            try {
                WholeFile.write(file.toPath(), work.text().getBytes(StandardCharsets.UTF_8));
                desk.notify(Messages.of("hand-in.saved", file.getName()));
            } catch (WholeFile.UnwrittenException e) {
                desk.notify(ExceptionText.unwritten(file, e));
            }
        }
    }

    void handout(LessonModel lesson, HandoutRequest choice) {
        if (!lesson.gate().open().get() && choice.edition() != HandoutEdition.BLANK) {
            desk.notify(Messages.of("handout.not-agreed"));
            return;
        }
        FileChooser chooser = chooser("handout");
        chooser.setInitialFileName(lesson.lesson().name() + ".pdf");
        chooser.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter("PDF", "*.pdf"),
                        new FileChooser.ExtensionFilter("HTML", "*.html"));
        File file = chooser.showSaveDialog(stage);
        if (file != null) {
            Optional<HandIn> own =
                    choice.withWork() ? Optional.of(workOf(lesson, "")) : Optional.empty();
            printer.write(
                    lesson.lesson(),
                    new HandoutOptions(choice.edition(), choice.paper(), false, own),
                    file.toPath(),
                    lesson.gate().open().get());
        }
    }

    void openFile() {
        FileChooser chooser = chooser("open-file");
        chooser.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter(
                                Messages.of("open-file.lessons"), "*.md", "*.zip"),
                        new FileChooser.ExtensionFilter(Messages.of("open-file.all"), "*"));
        File file = chooser.showOpenDialog(stage);
        if (file != null) {
            desk.openFile(file.toPath());
        }
    }

    private HandIn workOf(LessonModel lesson, String name) {
        return HandIn.of(workKeeper.workOn(lesson), name, lesson.lesson(), Instant.now());
    }

    private static FileChooser chooser(String title) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(Messages.of(title));
        return chooser;
    }
}
