package coldwright.desk.lesson;

import coldwright.desk.lesson.model.LessonModel;

import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * Actions outside the window's content.
 *
 * @param openFile asks the learner for a lesson file
 * @param openLink opens a link
 * @param archiveWork moves all saved work into a backup folder
 * @param handIn writes a lesson's work, under the learner's name, to a file for the teacher
 * @param handout prints a lesson
 * @param fullScreen turns full screen on or off
 */
public record AppActions(
        Runnable openFile,
        Consumer<String> openLink,
        Runnable archiveWork,
        BiConsumer<LessonModel, String> handIn,
        BiConsumer<LessonModel, HandoutRequest> handout,
        Runnable fullScreen) {}
