package coldwright.desk.model;

import coldwright.desk.run.RunGate;
import coldwright.lesson.Lesson;
import coldwright.workbook.work.ContentHash;

import java.util.HashSet;
import java.util.Set;

/**
 * Which lessons' snippets may do everything: those agreed to, and those being written by their
 * author. All others run confined.
 */
final class RunPermissions {
    private final WorkStore workStore;

    /** Files whose author is the learner; forgotten when the program ends. */
    private final Set<String> written = new HashSet<>();

    RunPermissions(WorkStore workStore) {
        this.workStore = workStore;
    }

    RunGate gateOf(Lesson lesson) {
        return written.contains(lesson.file()) || workStore.agreed(ContentHash.of(lesson.text()))
                ? RunGate.wide()
                : RunGate.confined(lesson.asksForEverything());
    }

    void agree(Lesson lesson) {
        workStore.agree(ContentHash.of(lesson.text()), lesson.title());
    }

    void whileWritten(Lesson lesson) {
        written.add(lesson.file());
    }

    boolean isWritten(Lesson lesson) {
        return written.contains(lesson.file());
    }

    void doneWriting(Lesson lesson) {
        written.remove(lesson.file());
    }
}
