package coldwright.terminal.console;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.workbook.Workbook;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.work.ContentHash;

/** Asks whether another person's snippets may run, once for each text. */
public final class RunConsent {
    private final TerminalScreen screen;
    private final LessonFolder courseLessons;

    public RunConsent(TerminalScreen screen, LessonFolder shelf) {
        this.screen = screen;
        this.courseLessons = shelf;
    }

    /** Whether a lesson came with the program or has no snippets. */
    public boolean isOurs(Lesson lesson) {
        return lesson.text().isEmpty() || courseLessons.contains(lesson.text());
    }

    /** Whether a lesson may run: it is ours, or the user agrees. If not, the user reads why. */
    public boolean mayRun(Lesson lesson, Workbook workbook) {
        return isOurs(lesson) || ask(lesson, workbook) || refuse(lesson.file());
    }

    /** Whether a learner's snippets may run. If not, the user reads why. */
    public boolean mayRun(HandIn work, String file, Workbook workbook) {
        String whose = text("consent.work", work.learner());
        return ask(whose, work.text(), text("consent.work-on", whose, work.lessonName()), workbook)
                || refuse(file);
    }

    /** Asks the user, unless they agreed to this exact text before; saves a yes. */
    public boolean ask(Lesson lesson, Workbook workbook) {
        return ask(text("consent.lesson", lesson.file()), lesson.text(), lesson.title(), workbook);
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

    /** Says that nothing was run. Returns false. */
    public boolean refuse(String file) {
        screen.complain(text("consent.refused", file));
        return false;
    }
}
