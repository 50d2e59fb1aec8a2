package coldwright.terminal.console;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.lesson.Lesson;
import coldwright.workbook.Workbook;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.work.ContentHash;

/** Asks whether snippets may do everything that the user may do, once for each text. */
public final class RunConsent {
    private final TerminalScreen screen;

    public RunConsent(TerminalScreen screen) {
        this.screen = screen;
    }

    /** Asks the user, unless they agreed to this exact text before; saves a yes. */
    public boolean ask(Lesson lesson, Workbook workbook) {
        return ask(text("consent.lesson", lesson.file()), lesson.text(), lesson.title(), workbook);
    }

    /** Asks the same for a learner's snippets. */
    public boolean ask(HandIn work, Workbook workbook) {
        String whose = text("consent.work", work.learner());
        return ask(whose, work.text(), text("consent.work-on", whose, work.lessonName()), workbook);
    }

    private boolean ask(String what, String text, String name, Workbook workbook) {
        ContentHash hash = ContentHash.of(text);
        if (workbook.agreements().value().agreed(hash)) {
            return true;
        }
        if (screen.asker().isEmpty()) {
            return false;
        }
        screen.paragraph(text("consent", what));
        boolean agreed = screen.agrees(text("consent.question"));
        if (agreed) {
            workbook.keep(workbook.agreements().value().agree(hash, name));
        }
        return agreed;
    }
}
