package coldwright.desk.page;

import coldwright.desk.model.LessonModel;

import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * What the program does outside of its window.
 *
 * @param openFile asks the learner for a lesson file
 * @param openLink follows a link
 * @param putAway moves all that was kept out of the way
 * @param handIn writes a lesson's work, under the learner's name, to a file for the teacher
 * @param handout sets a lesson for paper
 * @param fullScreen makes the window fill the screen, or no longer
 */
public record Deeds(
        Runnable openFile,
        Consumer<String> openLink,
        Runnable putAway,
        BiConsumer<LessonModel, String> handIn,
        BiConsumer<LessonModel, HandoutChoice> handout,
        Runnable fullScreen) {}
