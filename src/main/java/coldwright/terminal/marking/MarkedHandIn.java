package coldwright.terminal.marking;

import coldwright.workbook.handin.PredictionOutcome;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/**
 * The result of one handed-in file. Learner and lesson are empty if the file does not say; the date
 * is the file's; there are no steps if it could not be played; {@code sound} is whether the file
 * itself is valid.
 */
public record MarkedHandIn(
        String file,
        String learner,
        String lesson,
        String title,
        String date,
        List<MarkedHandInStep> steps,
        List<String> notes,
        boolean sound) {
    private static final int LONGEST = 400;

    public MarkedHandIn {
        steps = List.copyOf(steps);
        notes = List.copyOf(notes);
    }

    /** A file that could not be played. */
    static MarkedHandIn refused(String file, List<String> notes) {
        return new MarkedHandIn(file, "", "", "", "", List.of(), notes, false);
    }

    MarkedHandIn noting(String note) {
        List<String> more = new ArrayList<>(notes);
        more.add(note);
        return new MarkedHandIn(file, learner, lesson, title, date, steps, more, sound);
    }

    /** Whether the file is valid, every snippet ran to its end and every check line passed. */
    public boolean passes() {
        return sound && steps.stream().allMatch(MarkedHandInStep::passes);
    }

    int sum(ToIntFunction<MarkedHandInStep> count) {
        return steps.stream().mapToInt(count).sum();
    }

    List<MarkedPrediction> predictions() {
        return steps.stream().flatMap(step -> step.predictions().stream()).toList();
    }

    /** Number of questions answered before the run. */
    long predictionsMade() {
        return predictions().stream().filter(one -> !one.answer().isEmpty()).count();
    }

    /** Number of predictions with this outcome. */
    long predictions(PredictionOutcome how) {
        return predictions().stream().filter(one -> one.outcome() == how).count();
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
        for (MarkedHandInStep step : steps) {
            if (step.hasContent()) {
                lines.add("  " + step.line());
                step.predictions().forEach(one -> lines.add("    " + one.line()));
                step.troubles().forEach(trouble -> lines.add("    " + trouble));
            }
        }
        return lines;
    }

    /** Another person's text on one line, shortened if it is long. */
    static String oneLine(String words) {
        String plain = words.replaceAll("[\\s\\p{Cntrl}\\u2028\\u2029]+", " ").strip();
        return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST) + "…";
    }
}
