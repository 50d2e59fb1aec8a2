package coldwright.desk;

import coldwright.paint.style.BundledFonts;
import coldwright.words.Words;
import coldwright.workbook.DataFolder;
import coldwright.workbook.Workbook;

import javafx.application.Application;

import java.nio.file.Path;
import java.util.Optional;

/** Opens Coldwright's window. */
public final class Desk {
    private Desk() {}

    /**
     * Opens the window and returns when it is closed.
     *
     * @param file a lesson, a folder or zip of lessons or a recipe file; empty for the home page
     * @throws NoDisplayException at once, without output on the terminal, if there is no screen
     */
    public static void open(Optional<Path> file) throws NoDisplayException {
        System.setProperty("java.awt.headless", "true");
        BundledFonts.useIfMissing();
        Words.show(Workbook.languageIn(DataFolder.usual()));
        DisplayProbe.start();
        Application.launch(
                DeskApp.class,
                file.map(one -> new String[] {one.toString()}).orElse(new String[0]));
    }
}
