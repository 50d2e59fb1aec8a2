package coldwright.terminal.console;

import coldwright.lesson.Lesson;
import coldwright.workbook.Workbook;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.work.ContentHash;

/** Asks whether snippets may do everything that the user may do, once for each text. */
public final class RunConsent {
    private static final String TRUST =
            "%s wants to do more than lessons may do. If you agree, its snippets can read and"
                    + " change your files, use the network and start other programs, as you can."
                    + " Agree only if you trust who wrote them.";

    private final TerminalScreen screen;

    public RunConsent(TerminalScreen screen) {
        this.screen = screen;
    }

    /** Asks the user, unless they agreed to this exact text before; saves a yes. */
    public boolean ask(Lesson lesson, Workbook workbook) {
        return ask("The lesson " + lesson.file(), lesson.text(), lesson.title(), workbook);
    }

    /** Asks the same for a learner's snippets. */
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
        boolean agreed = screen.agrees("Let them do that?");
        if (agreed) {
            workbook.keep(workbook.agreements().value().agree(hash, name));
        }
        return agreed;
    }
}
