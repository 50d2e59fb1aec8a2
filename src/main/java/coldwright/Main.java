package coldwright;

import coldwright.desk.Desk;
import coldwright.desk.NoDisplayException;
import coldwright.terminal.Terminal;
import coldwright.terminal.console.CrashHandler;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;

/** Where the program starts: the window, or with words a command. */
public final class Main {
    private Main() {}

    /**
     * Starts the program.
     *
     * @param words a command for the terminal; none to open the window, or a lesson's file, a pack
     *     of lessons or a batch to open it with
     */
    public static void main(String[] words) {
        CrashHandler.install();
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
     * A lesson, a pack of them or a batch, as the desktop hands it over when its file is opened
     * there. A folder that is called like a command is none.
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
