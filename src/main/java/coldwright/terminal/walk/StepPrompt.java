package coldwright.terminal.walk;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.terminal.console.TerminalScreen;

import java.util.Locale;
import java.util.Set;

/** Questions between the steps of a walk, asked until the answer is one of the options. */
final class StepPrompt {
    private StepPrompt() {}

    /** Asks whether to go on with the next step; an end of the input means no. */
    static boolean isWanted(TerminalScreen screen) {
        return ask(screen, "next", text("next"), "q", Set.of("q", "quit")).isEmpty();
    }

    /** Asks whether to continue at a step, from 1; otherwise the walk starts again. */
    static boolean isResumed(TerminalScreen screen, int step, String title) {
        return ask(screen, "resume", text("resume", step, title), "", Set.of("b")).isEmpty();
    }

    private static String ask(
            TerminalScreen screen, String key, String question, String atEnd, Set<String> options) {
        while (true) {
            String typed = screen.ask(question).orElse(atEnd).strip();
            screen.say("");
            if (typed.isEmpty() || options.contains(typed.toLowerCase(Locale.ROOT))) {
                return typed;
            }
            screen.paragraph(typed.equals("?") ? text(key + ".help") : text(key + ".unfit", typed));
            screen.say("");
        }
    }
}
