package coldwright.terminal.walk;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.figure.Figure;
import coldwright.lesson.ExpectedAnswer;
import coldwright.lesson.LessonPart;
import coldwright.science.Require;
import coldwright.terminal.console.PlainProse;
import coldwright.terminal.console.TerminalScreen;
import coldwright.terminal.console.TypedCurve;
import coldwright.workbook.handin.PredictionOutcome;
import coldwright.workbook.work.LearnerAnswer;

import picocli.CommandLine.Help.Ansi.Style;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** A prediction as the terminal asks for it, and its answer. */
final class PredictionPrompt {
    private final LessonPart.Asked prediction;
    private final String form;
    private Optional<String> reply = Optional.empty();
    private boolean right;
    private Optional<TypedCurve> points = Optional.empty();
    private Optional<LearnerAnswer> answer = Optional.empty();

    private PredictionPrompt(LessonPart.Asked prediction) {
        this.prediction = prediction;
        this.form =
                prediction
                        .answer()
                        .match(
                                choice -> text("form.letter", letter(choice.choices().size() - 1)),
                                several ->
                                        text("form.letters", letter(several.choices().size() - 1)),
                                amount ->
                                        amount.unit().isEmpty()
                                                ? text("form.number")
                                                : text("form.number.unit", amount.unit()),
                                TypedCurve::form);
    }

    /** Shows the question and waits for an answer if there is a user. */
    static PredictionPrompt ask(LessonPart.Asked prediction, TerminalScreen screen) {
        PredictionPrompt prompt = new PredictionPrompt(prediction);
        boolean predicts = prediction instanceof LessonPart.Prediction;
        screen.paragraph(
                Style.bold,
                predicts ? text("predict", prediction.question()) : prediction.question());
        List<String> choices = choices(prediction.answer());
        for (int i = 0; i < choices.size(); i++) {
            PlainProse.behind("  %s  ".formatted(letter(i)), choices.get(i), screen.width())
                    .forEach(screen::say);
        }
        if (screen.asker().isPresent()) {
            prompt.take(screen);
        }
        screen.say("");
        return prompt;
    }

    private static List<String> choices(ExpectedAnswer answer) {
        return answer.match(
                ExpectedAnswer.Choice::choices,
                ExpectedAnswer.Several::choices,
                amount -> List.of(),
                curve -> List.of());
    }

    private static String letter(int index) {
        return String.valueOf((char) ('a' + index));
    }

    /** Asks until the answer is understood, or empty. */
    private void take(TerminalScreen screen) {
        while (true) {
            String line = screen.ask(text("answer", form)).orElse("").strip();
            if (line.isEmpty() || understood(line.toLowerCase(Locale.ROOT))) {
                return;
            }
            screen.paragraph(
                    line.equals("?")
                            ? text("answer.help", form)
                            : prediction.answer() instanceof ExpectedAnswer.Curve curve
                                    ? TypedCurve.refusal(curve, line)
                                    : text("answer.unfit", line, form));
        }
    }

    /** The answer to save; empty if there is none. */
    Optional<LearnerAnswer> answer() {
        return answer;
    }

    private boolean understood(String line) {
        return prediction
                .answer()
                .match(
                        choice -> {
                            int index = line.length() == 1 ? line.charAt(0) - 'a' : -1;
                            if (index < 0 || index >= choice.choices().size()) {
                                return false;
                            }
                            String chosen = choice.choices().get(index);
                            return take(chosen, chosen, new LearnerAnswer.Choice(index, chosen));
                        },
                        several -> {
                            Set<Integer> chosen = new TreeSet<>();
                            for (char one : line.replaceAll("[\\s,;]", "").toCharArray()) {
                                chosen.add(one - 'a');
                            }
                            if (chosen.stream()
                                    .anyMatch(i -> i < 0 || i >= several.choices().size())) {
                                return false;
                            }
                            String words = several.words(chosen);
                            return take(words, words, new LearnerAnswer.Typed(words));
                        },
                        amount -> {
                            var number = amount.read(line);
                            return number.isPresent()
                                    && take(
                                            describe(number.getAsDouble(), amount.unit()),
                                            line,
                                            new LearnerAnswer.Typed(line));
                        },
                        curve -> {
                            points = TypedCurve.read(curve, line);
                            return points.isPresent()
                                    && take(points.get().words(), line, points.get().answer());
                        });
    }

    private boolean take(String shown, String said, LearnerAnswer learnerAnswer) {
        reply = Optional.of(shown);
        answer = Optional.of(learnerAnswer);
        right = PredictionOutcome.of(prediction.answer(), said) == PredictionOutcome.YES;
        return true;
    }

    private static String describe(double value, String unit) {
        return Require.format(value) + (unit.isEmpty() ? "" : " " + unit);
    }

    /** After the run: shows the learner's answer, the right one and the explanation. */
    void reveal(List<Figure> figures, TerminalScreen screen) {
        String outcome =
                prediction
                        .answer()
                        .match(
                                choice -> outcome(choice.choices().get(choice.right()), !right),
                                several -> outcome(several.words(several.right()), !right),
                                amount ->
                                        outcome(
                                                text(
                                                        "right.within",
                                                        describe(amount.value(), amount.unit()),
                                                        Require.format(amount.within())),
                                                true),
                                curve -> outcome(firstCurve(figures), true));
        screen.paragraph(outcome);
        screen.say("");
        if (prediction.answer() instanceof ExpectedAnswer.Several several) {
            for (int i = 0; i < several.reasons().size(); i++) {
                if (!several.reasons().get(i).isEmpty()) {
                    PlainProse.behind(
                                    "  %s  ".formatted(letter(i)),
                                    several.reasons().get(i),
                                    screen.width())
                            .forEach(screen::say);
                }
            }
        }
        List<String> explanation = PlainProse.set(prediction.explanation(), screen.width());
        if (!explanation.isEmpty()) {
            explanation.forEach(screen::say);
            screen.say("");
        }
    }

    private String outcome(String rightAnswer, boolean shown) {
        String said = reply.map(words -> text(right ? "said.right" : "said", words)).orElse("");
        return (said + (shown ? " " + text("right", rightAnswer) : "")).strip();
    }

    /** The first curve of a run at the typed points. */
    private String firstCurve(List<Figure> figures) {
        return TypedCurve.firstOf(figures)
                .flatMap(first -> points.map(one -> one.beside(first)))
                .filter(words -> !words.isEmpty())
                .orElseGet(() -> text("right.curve"));
    }
}
