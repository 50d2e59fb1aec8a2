package coldwright.desk.model;

import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.WorkMapper;
import coldwright.workbook.work.ContentHash;

/** Stores a learner's work and agreements; all methods return at once. */
public interface WorkStore {
    /** Restores the saved work on a lesson, and saves its changes from now on. */
    void opened(LessonModel lesson);

    /**
     * A lesson was read again: moves the work on it to the new one, rather than what was last
     * written to disk.
     */
    default void replaced(LessonModel former, LessonModel now) {
        WorkMapper.carryOver(former, WorkMapper.empty(former), now);
        opened(now);
    }

    /** Whether the learner agreed earlier to run the snippets of a lesson with this text. */
    boolean agreed(ContentHash hash);

    /** Records the learner's agreement to a lesson's text. */
    void agree(ContentHash hash, String name);
}
