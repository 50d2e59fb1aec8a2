package coldwright.terminal;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonShelf;
import coldwright.workbook.Workbook;
import coldwright.workbook.work.ContentHash;

import java.util.Locale;

/** Whether somebody else's snippets may run: only if the user says so, once for each text. */
final class Leave {
    private static final String TRUST =
            "This lesson did not come with Coldwright. Its snippets are programs: they can read and"
                    + " change your files, use the network and start other programs, as you can."
                    + " Let them run only if you trust who wrote them.";

    private final Screen screen;
    private final LessonShelf shelf;

    Leave(Screen screen, LessonShelf shelf) {
        this.screen = screen;
        this.shelf = shelf;
    }

    /** Whether a lesson came with the program, or has nothing to run. */
    boolean isOurs(Lesson lesson) {
        return lesson.text().isEmpty() || shelf.holds(lesson.text());
    }

    /** Asks whoever sits there, unless they agreed to this very text before; keeps a yes. */
    boolean ask(Lesson lesson, Workbook workbook) {
        ContentHash hash = ContentHash.of(lesson.text());
        if (workbook.agreements().value().agreed(hash)) {
            return true;
        }
        screen.tell(TRUST);
        boolean agreed =
                screen.ask("Let them run? (yes or no):")
                        .filter(answer -> answer.strip().toLowerCase(Locale.ROOT).startsWith("y"))
                        .isPresent();
        if (agreed) {
            workbook.save(workbook.agreements().value().agree(hash, lesson.title()));
        }
        return agreed;
    }

    /** What to say where nobody can be asked. */
    static String refusal(Lesson lesson) {
        return lesson.file() + ": nothing of it was run; add --trust to let its snippets run";
    }
}
