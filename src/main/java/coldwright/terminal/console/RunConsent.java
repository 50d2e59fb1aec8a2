package coldwright.terminal.console;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.workbook.Workbook;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.work.ContentHash;

/** Asks whether another person's snippets may run, once for each text. */
public final class RunConsent {
    private static final String TRUST =
            "%s did not come with Coldwright. Its snippets are programs: they can read and"
                    + " change your files, use the network and start other programs, as you can."
                    + " Let them run only if you trust who wrote them.";

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

    /** Asks the user, unless they agreed to this exact text before; saves a yes. */
    public boolean ask(Lesson lesson, Workbook workbook) {
        return ask("The lesson " + lesson.file(), lesson.text(), lesson.title(), workbook);
    }

    /** Asks whether a learner's snippets may run. */
    public boolean ask(HandIn work, Workbook workbook) {
        String whose = "The work of " + work.learner();
        return ask(whose, work.text(), whose + " on " + work.lessonName(), workbook);
    }

    private boolean ask(String what, String text, String name, Workbook workbook) {
        ContentHash hash = ContentHash.of(text);
        if (workbook.agreements().value().agreed(hash)) {
            return true;
        }
        if (screen.asker().isEmpty()) {
            return false;
        }
        screen.printError(TRUST.formatted(what));
        boolean agreed = screen.agrees("Let them run?");
        if (agreed) {
            workbook.keep(workbook.agreements().value().agree(hash, name));
        }
        return agreed;
    }

    /** The message when nobody agreed or nobody can be asked. */
    public static String refusal(Lesson lesson) {
        return refusal(lesson.file());
    }

    /** The same for a file. */
    public static String refusal(String file) {
        return file + ": nothing of it was run; add --trust to let its snippets run";
    }
}
