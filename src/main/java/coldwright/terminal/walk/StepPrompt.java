package coldwright.terminal.walk;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.terminal.console.TerminalScreen;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The prompt between two steps of a walk. */
final class StepPrompt {
    private static final Set<String> STOPS = Set.of("q", "quit");

    private StepPrompt() {}

    /** Asks whether to continue; an end of the input means no. */
    static boolean isWanted(TerminalScreen screen) {
        while (true) {
            Optional<String> line = screen.ask(text("next"));
            screen.say("");
            String typed = line.orElse("q").strip();
            if (typed.isEmpty() || STOPS.contains(typed.toLowerCase(Locale.ROOT))) {
                return typed.isEmpty();
            }
            screen.paragraph(typed.equals("?") ? text("next.help") : text("next.unfit", typed));
            screen.say("");
        }
    }
}
