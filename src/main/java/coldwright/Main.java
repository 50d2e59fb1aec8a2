package coldwright;

import coldwright.desk.Desk;
import coldwright.desk.NoDisplayException;
import coldwright.terminal.Terminal;
import coldwright.terminal.console.CrashHandler;
import coldwright.text.TemporaryFolders;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;

/** Starts the program: the window, or a command if there are arguments. */
public final class Main {
    private Main() {}

    /**
     * Starts the program.
     *
     * @param words a command for the terminal; or nothing, a lesson file, a pack of lessons or a
     *     recipe file to open in the window
     */
    public static void main(String[] words) {
        CrashHandler.install();
        Thread sweep = new Thread(TemporaryFolders::sweep, "sweep");
        sweep.setDaemon(true);
        sweep.start();
        System.exit(exitOf(words));
    }

    private static int exitOf(String[] words) {
        try {
            if (words.length == 0) {
                return window(Optional.empty());
            }
            return words.length == 1 && isForTheWindow(words[0])
                    ? window(Optional.of(Path.of(words[0]).toAbsolutePath()))
                    : Terminal.ofThisProcess().execute(words);
        } catch (RuntimeException | Error fault) {
            System.err.println(CrashHandler.sentence(fault));
            return CrashHandler.EXIT;
        }
    }

    /**
     * Whether the argument is a file that the window opens: a lesson, a pack of lessons or a recipe
     * file. A folder with the name of a command isn't one.
     */
    static boolean isForTheWindow(String word) {
        File file = new File(word);
        return file.isFile()
                ? word.matches("(?i).*\\.(md|batch|zip)")
                : file.isDirectory() && !Terminal.ofThisProcess().knows(word);
    }

    private static int window(Optional<Path> file) {
        try {
            Desk.open(file);
            return 0;
        } catch (NoDisplayException e) {
            return Terminal.ofThisProcess().insteadOfWindow(e.getMessage());
        }
    }
}
