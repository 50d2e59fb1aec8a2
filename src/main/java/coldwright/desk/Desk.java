package coldwright.desk;

import javafx.application.Application;

import java.nio.file.Path;
import java.util.Optional;

/** The way in to the window. */
public final class Desk {
    private Desk() {}

    /**
     * Opens the window and returns when it is closed.
     *
     * @param file a lesson, a pack of lessons or a batch to open in it; empty for the home page
     * @throws NoDisplayException at once, and without noise on the terminal, if there is no screen
     *     to open it on
     */
    public static void open(Optional<Path> file) throws NoDisplayException {
        System.setProperty("java.awt.headless", "true");
        DisplayProbe.start();
        Application.launch(
                DeskApp.class,
                file.map(one -> new String[] {one.toString()}).orElse(new String[0]));
    }
}
