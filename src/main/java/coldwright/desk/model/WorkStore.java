package coldwright.desk.model;

import coldwright.desk.lesson.model.LessonModel;
import coldwright.desk.lesson.model.WorkMapper;
import coldwright.workbook.work.ContentHash;

/** What keeps a learner's work and agreements beyond the window; all of it returns at once. */
public interface WorkStore {
    /** Keeps nothing, and asks about every lesson that did not come with the program. */
    WorkStore NONE =
            new WorkStore() {
                @Override
                public void opened(LessonModel lesson) {}

                @Override
                public boolean agreed(ContentHash hash) {
                    return false;
                }

                @Override
                public void agree(ContentHash hash, String name) {}
            };

    /**
     * A lesson lies on the desk: what is kept of it comes back, and what changes is kept.
     *
     * @param lesson the lesson, with its author's texts
     */
    void opened(LessonModel lesson);

    /**
     * A lesson was read again: the work on it goes on in the new one, rather than what was last
     * written to disk.
     *
     * @param former the lesson as it lay on the desk
     * @param now the lesson that takes its place
     */
    default void replaced(LessonModel former, LessonModel now) {
        WorkMapper.carryOver(former, WorkMapper.empty(former), now);
        opened(now);
    }

    /**
     * Whether the learner agreed before that a lesson's snippets run.
     *
     * @param hash of the lesson's text
     * @return true if so
     */
    boolean agreed(ContentHash hash);

    /**
     * The learner agrees, from now on.
     *
     * @param hash of the lesson's text
     * @param name what the lesson is called
     */
    void agree(ContentHash hash, String name);
}
