package coldwright.terminal;

import java.util.Optional;

/** What stands between two steps of a walk. */
final class NextStep {
    private static final String HELP =
            "Each step is text, perhaps a question, and code that runs by itself. Enter goes on, q"
                    + " stops. Your answers and the step you are at are kept; the next walk goes on"
                    + " there. To change code, open the lesson in the window. Figures lie as files"
                    + " where their paths say.";

    private NextStep() {}

    /** Asks whether to go on; an end of the input means no. */
    static boolean isWanted(Screen screen) {
        while (true) {
            Optional<String> line = screen.ask("Enter for the next step, q to stop, ? for help:");
            screen.say("");
            if (line.filter(words -> words.strip().equals("?")).isEmpty()) {
                return line.isPresent() && !line.get().strip().equalsIgnoreCase("q");
            }
            screen.tell(HELP);
            screen.say("");
        }
    }
}
