package coldwright.desk.model;

import coldwright.desk.run.RunGate;
import coldwright.lesson.Lesson;
import coldwright.workbook.work.ContentHash;

import java.util.HashSet;
import java.util.Set;

/**
 * Which lessons' snippets may run: those of the program, those agreed to, and those being written
 * by their author.
 */
final class RunPermissions {
    private final WorkStore workStore;
    private final Set<ContentHash> ofThisProgram = new HashSet<>();

    /** Files whose author is the learner; forgotten when the program ends. */
    private final Set<String> written = new HashSet<>();

    RunPermissions(WorkStore workStore) {
        this.workStore = workStore;
    }

    void comesWithTheProgram(Lesson lesson) {
        ofThisProgram.add(ContentHash.of(lesson.text()));
    }

    RunGate gateOf(Lesson lesson) {
        ContentHash hash = ContentHash.of(lesson.text());
        boolean known =
                ofThisProgram.contains(hash)
                        || written.contains(lesson.file())
                        || workStore.agreed(hash);
        return known ? RunGate.wide() : RunGate.shut();
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
