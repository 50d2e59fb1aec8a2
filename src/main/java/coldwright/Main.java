package coldwright;

import coldwright.desk.Desk;
import coldwright.desk.NoDisplayException;
import coldwright.terminal.LastResort;
import coldwright.terminal.Terminal;

/** Where the program starts: the window, or with words a command. */
public final class Main {
    private Main() {}

    /**
     * Starts the program.
     *
     * @param words a command for the terminal; none to open the window
     */
    public static void main(String[] words) {
        LastResort.install();
        System.exit(exitOf(words));
    }

    private static int exitOf(String[] words) {
        try {
            return words.length == 0 ? window() : Terminal.ofThisProcess().obey(words);
        } catch (RuntimeException | Error fault) {
            System.err.println(LastResort.sentence(fault));
            return LastResort.EXIT;
        }
    }

    private static int window() {
        try {
            Desk.open();
            return 0;
        } catch (NoDisplayException e) {
            return Terminal.ofThisProcess().insteadOfWindow(e.getMessage());
        }
    }
}
