package coldwright.desk;

import javafx.application.Application;

/** The way in to the window. */
public final class Desk {
    private Desk() {}

    /**
     * Opens the window and returns when it is closed.
     *
     * @throws NoDisplayException at once, and without noise on the terminal, if there is no screen
     *     to open it on
     */
    public static void open() throws NoDisplayException {
        System.setProperty("java.awt.headless", "true");
        Display.start();
        Application.launch(DeskApp.class);
    }
}
