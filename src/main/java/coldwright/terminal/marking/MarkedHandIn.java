package coldwright.terminal.marking;

import static coldwright.terminal.console.ConsoleText.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/**
 * The result of one handed-in file. Learner and lesson are empty if the file does not say; the date
 * is the file's; there are no steps if it could not be played; {@code sound} is whether the file
 * itself is valid, {@code busy} whether the machine was too busy to mark it.
 */
public record MarkedHandIn(
        String file,
        String learner,
        String lesson,
        String title,
        String date,
        List<MarkedStep> steps,
        List<String> notes,
        boolean sound,
        boolean busy) {
    private static final int LONGEST = 400;

    public MarkedHandIn {
        steps = List.copyOf(steps);
        notes = List.copyOf(notes);
    }

    /** A file that could not be played. */
    static MarkedHandIn refused(String file, List<String> notes) {
        return new MarkedHandIn(file, "", "", "", "", List.of(), notes, false, false);
    }

    MarkedHandIn noting(String note) {
        List<String> more = new ArrayList<>(notes);
        more.add(note);
        return new MarkedHandIn(file, learner, lesson, title, date, steps, more, sound, busy);
    }

    /** Whether the file is valid, every snippet ran to its end and every check line passed. */
    public boolean passes() {
        return sound && !busy && steps.stream().allMatch(MarkedStep::passes);
    }

    int sum(ToIntFunction<MarkedStep> count) {
        return steps.stream().mapToInt(count).sum();
    }

    List<MarkedPrediction> predictions() {
        return steps.stream().flatMap(step -> step.predictions.stream()).toList();
    }

    /** What a teacher should look at, a sentence each: doubts about the file, then own failures. */
    List<String> worthALook() {
        List<String> all = new ArrayList<>(notes);
        for (MarkedStep step : steps) {
            step.own.forEach(one -> all.add(text("mark.in-step", step.title, one)));
        }
        return all;
    }

    /** The result as lines for a person. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (steps.isEmpty()) {
            lines.add(file + (learner.isEmpty() ? "" : ": " + learner));
        } else {
            lines.add("%s: %s, %s".formatted(file, learner, title));
        }
        notes.forEach(note -> lines.add("  " + note));
        steps.forEach(step -> lines.addAll(step.lines()));
        return lines;
    }

    /** Another person's text on one line, shortened if it is long. */
    static String oneLine(String words) {
        String plain = words.replaceAll("[\\s\\p{Cntrl}\\u2028\\u2029]+", " ").strip();
        return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST) + "…";
    }
}
