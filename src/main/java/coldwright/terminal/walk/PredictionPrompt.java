package coldwright.terminal.walk;

import coldwright.figure.Figure;
import coldwright.figure.Series;
import coldwright.lesson.ExpectedAnswer;
import coldwright.lesson.LessonPart;
import coldwright.science.Require;
import coldwright.terminal.console.PlainProse;
import coldwright.terminal.console.TerminalScreen;
import coldwright.terminal.console.TypedCurve;
import coldwright.workbook.handin.PredictionOutcome;
import coldwright.workbook.work.LearnerAnswer;

import picocli.CommandLine.Help.Ansi.Style;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** A prediction as the terminal asks for it, and its answer. */
final class PredictionPrompt {
    private static final int MOST_TRIES = 3;
    private static final String HELP =
            "Say what you expect before the snippet runs; nobody marks it. Type %s. Enter alone"
                    + " goes on without an answer. What is right is shown after the run.";

    private final LessonPart.Prediction prediction;
    private Optional<String> reply = Optional.empty();
    private boolean right;
    private Optional<TypedCurve> points = Optional.empty();
    private Optional<LearnerAnswer> answer = Optional.empty();

    private PredictionPrompt(LessonPart.Prediction prediction) {
        this.prediction = prediction;
    }

    /** Shows the question and waits for an answer if there is a user. */
    static PredictionPrompt ask(LessonPart.Prediction prediction, TerminalScreen screen) {
        PredictionPrompt predictionPrompt = new PredictionPrompt(prediction);
        screen.printError(Style.bold, "What do you expect? " + prediction.question());
        predictionPrompt.choices(screen.width()).forEach(screen::say);
        if (screen.asker().isPresent()) {
            predictionPrompt.take(screen);
        }
        screen.say("");
        return predictionPrompt;
    }

    private List<String> choices(int width) {
        List<String> lines = new ArrayList<>();
        if (prediction.answer() instanceof ExpectedAnswer.Choice choice) {
            for (int i = 0; i < choice.choices().size(); i++) {
                String mark = "  %s  ".formatted(letter(i));
                lines.addAll(PlainProse.behind(mark, choice.choices().get(i), width));
            }
        }
        return lines;
    }

    private static String letter(int index) {
        return String.valueOf((char) ('a' + index));
    }

    private void take(TerminalScreen screen) {
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            Optional<String> line =
                    screen.ask("Your answer (" + form() + "; Enter to leave it out, ? for help):");
            if (line.isEmpty() || line.get().isBlank()) {
                return;
            }
            if (line.get().strip().equals("?")) {
                screen.printError(HELP.formatted(form()));
                tries--;
                continue;
            }
            if (understood(line.get().strip().toLowerCase(Locale.ROOT))) {
                return;
            }
            screen.printError(refusal(line.get().strip()));
        }
    }

    /** The answer to save; empty if there is none. */
    Optional<LearnerAnswer> answer() {
        return answer;
    }

    private String refusal(String line) {
        return prediction.answer() instanceof ExpectedAnswer.Curve curve
                ? TypedCurve.refusal(curve, line)
                : "\"%s\" is not %s.".formatted(line, form());
    }

    private String form() {
        if (prediction.answer() instanceof ExpectedAnswer.Choice choice) {
            return "a letter from a to " + letter(choice.choices().size() - 1);
        }
        if (prediction.answer() instanceof ExpectedAnswer.Curve curve) {
            return TypedCurve.form(curve);
        }
        ExpectedAnswer.Amount amount = (ExpectedAnswer.Amount) prediction.answer();
        return "a number" + (amount.unit().isEmpty() ? "" : " in " + amount.unit());
    }

    private boolean understood(String line) {
        if (prediction.answer() instanceof ExpectedAnswer.Choice choice) {
            int index = line.length() == 1 ? line.charAt(0) - 'a' : -1;
            if (index < 0 || index >= choice.choices().size()) {
                return false;
            }
            reply = Optional.of(choice.choices().get(index));
            answer = Optional.of(new LearnerAnswer.Choice(index, choice.choices().get(index)));
            judge(choice.choices().get(index));
            return true;
        }
        if (prediction.answer() instanceof ExpectedAnswer.Curve curve) {
            points = TypedCurve.read(curve, line);
            reply = points.map(TypedCurve::words);
            answer = points.map(TypedCurve::answer);
            return points.isPresent();
        }
        ExpectedAnswer.Amount amount = (ExpectedAnswer.Amount) prediction.answer();
        OptionalDouble number = amount.read(line);
        number.ifPresent(
                value -> {
                    reply = Optional.of(describe(value, amount.unit()));
                    answer = Optional.of(new LearnerAnswer.Typed(line));
                    judge(line);
                });
        return number.isPresent();
    }

    private void judge(String said) {
        right = PredictionOutcome.of(prediction.answer(), said) == PredictionOutcome.YES;
    }

    private static String describe(double value, String unit) {
        return Require.format(value) + (unit.isEmpty() ? "" : " " + unit);
    }

    /** After the run: shows the learner's answer, the right one and the explanation. */
    void reveal(List<Figure> figures, TerminalScreen screen) {
        String answer = "The answer: " + rightAnswer(figures) + ".";
        String said =
                reply.map(words -> "You said: " + words + (right ? ". That is right. " : ". "))
                        .orElse("");
        screen.printError(
                said
                        + (right && prediction.answer() instanceof ExpectedAnswer.Choice
                                ? ""
                                : answer));
        screen.say("");
        List<String> explanation = PlainProse.set(prediction.explanation(), screen.width());
        if (!explanation.isEmpty()) {
            explanation.forEach(screen::say);
            screen.say("");
        }
    }

    private String rightAnswer(List<Figure> figures) {
        if (prediction.answer() instanceof ExpectedAnswer.Choice choice) {
            return choice.choices().get(choice.right());
        }
        if (prediction.answer() instanceof ExpectedAnswer.Amount amount) {
            return "%s; within %s counts as right"
                    .formatted(
                            describe(amount.value(), amount.unit()),
                            Require.format(amount.within()));
        }
        if (prediction.answer() instanceof ExpectedAnswer.Curve) {
            String beside =
                    figures.stream()
                            .flatMap(figure -> figure.series().stream())
                            .filter(Series.Curve.class::isInstance)
                            .findFirst()
                            .flatMap(first -> points.map(one -> one.beside((Series.Curve) first)))
                            .orElse("");
            return beside.isEmpty() ? "the first curve of the result" : beside;
        }
        throw new AssertionError(prediction.answer());
    }
}
