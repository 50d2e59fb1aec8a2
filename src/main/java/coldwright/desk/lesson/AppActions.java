package coldwright.desk.lesson;

import coldwright.desk.lesson.model.LessonModel;

import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * What the program does outside of its window.
 *
 * @param openFile asks the learner for a lesson file
 * @param openLink follows a link
 * @param archiveWork moves all that was kept out of the way
 * @param handIn writes a lesson's work, under the learner's name, to a file for the teacher
 * @param handout sets a lesson for paper
 * @param fullScreen makes the window fill the screen, or no longer
 */
public record AppActions(
        Runnable openFile,
        Consumer<String> openLink,
        Runnable archiveWork,
        BiConsumer<LessonModel, String> handIn,
        BiConsumer<LessonModel, HandoutRequest> handout,
        Runnable fullScreen) {}
