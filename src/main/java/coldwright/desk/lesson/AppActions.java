package coldwright.desk.lesson;

import coldwright.desk.lesson.model.LessonModel;

import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * Actions outside the window's content: to ask for a lesson file, open a link, move all saved work
 * into a backup folder, write a hand-in under the learner's name, print a handout, and turn full
 * screen on or off.
 */
public record AppActions(
        Runnable openFile,
        Consumer<String> openLink,
        Runnable archiveWork,
        BiConsumer<LessonModel, String> handIn,
        BiConsumer<LessonModel, HandoutRequest> handout,
        Runnable fullScreen) {}
