package coldwright.terminal.walk;

import coldwright.terminal.console.TerminalScreen;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The prompt between two steps of a walk. */
final class StepPrompt {
    private static final String HELP =
            "Each step is text, perhaps a question, and code that runs by itself. Enter goes on, q"
                    + " stops. Your answers and the step you are at are kept; the next walk goes on"
                    + " there. To change code, open the lesson in the window. Figures lie as files"
                    + " where their paths say.";

    private static final String OTHER =
            "\"%s\" means nothing here: press Enter alone to go on, or type q or ?.";
    private static final Set<String> STOPS = Set.of("q", "quit");

    private StepPrompt() {}

    /** Asks whether to continue; an end of the input means no. */
    static boolean isWanted(TerminalScreen screen) {
        while (true) {
            Optional<String> line = screen.ask("Enter for the next step, q to stop, ? for help:");
            screen.say("");
            String typed = line.orElse("q").strip();
            if (typed.isEmpty() || STOPS.contains(typed.toLowerCase(Locale.ROOT))) {
                return typed.isEmpty();
            }
            screen.printError(typed.equals("?") ? HELP : OTHER.formatted(typed));
            screen.say("");
        }
    }
}
