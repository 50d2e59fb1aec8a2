package coldwright.desk.page;

import java.util.function.Consumer;

/**
 * What the program does outside of its window.
 *
 * @param openFile asks the learner for a lesson file
 * @param openLink follows a link
 * @param putAway moves all that was kept out of the way
 * @param fullScreen makes the window fill the screen, or no longer
 */
public record Deeds(
        Runnable openFile, Consumer<String> openLink, Runnable putAway, Runnable fullScreen) {}
