package coldwright.terminal;

import coldwright.figure.Figure;
import coldwright.figure.Series;
import coldwright.lesson.Answer;
import coldwright.lesson.Part;
import coldwright.science.Require;
import coldwright.workbook.work.Said;

import picocli.CommandLine.Help.Ansi.Style;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** A forecast as the terminal asks it, and what was answered. */
final class Asked {
    private static final int MOST_TRIES = 3;
    private static final String HELP =
            "Say what you expect before the snippet runs; nobody marks it. Type %s. Enter alone"
                    + " goes on without an answer. What is right is shown after the run.";

    private final Part.Forecast forecast;
    private Optional<String> reply = Optional.empty();
    private boolean right;
    private Optional<DrawnPoints> points = Optional.empty();
    private Optional<Said> said = Optional.empty();

    private Asked(Part.Forecast forecast) {
        this.forecast = forecast;
    }

    /** Shows the question and, if somebody is there, waits for an answer. */
    static Asked ask(Part.Forecast forecast, Screen screen) {
        Asked asked = new Asked(forecast);
        screen.tell(Style.bold, "What do you expect? " + forecast.question());
        asked.choices(screen.width()).forEach(screen::say);
        if (screen.asker().isPresent()) {
            asked.take(screen);
        }
        screen.say("");
        return asked;
    }

    private List<String> choices(int width) {
        List<String> lines = new ArrayList<>();
        if (forecast.answer() instanceof Answer.Choice choice) {
            for (int i = 0; i < choice.choices().size(); i++) {
                String mark = "  %s  ".formatted(letter(i));
                lines.addAll(ProseText.behind(mark, choice.choices().get(i), width));
            }
        }
        return lines;
    }

    private static String letter(int index) {
        return String.valueOf((char) ('a' + index));
    }

    private void take(Screen screen) {
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            Optional<String> line =
                    screen.ask("Your answer (" + form() + "; Enter to leave it out, ? for help):");
            if (line.isEmpty() || line.get().isBlank()) {
                return;
            }
            if (line.get().strip().equals("?")) {
                screen.tell(HELP.formatted(form()));
                tries--;
                continue;
            }
            if (understood(line.get().strip().toLowerCase(Locale.ROOT))) {
                return;
            }
            screen.tell(refusal(line.get().strip()));
        }
    }

    /** The answer as it is kept; nothing if none was given. */
    Optional<Said> said() {
        return said;
    }

    private String refusal(String line) {
        return forecast.answer() instanceof Answer.Curve curve
                ? DrawnPoints.refusal(curve, line)
                : "\"%s\" is not %s.".formatted(line, form());
    }

    private String form() {
        if (forecast.answer() instanceof Answer.Choice choice) {
            return "a letter from a to " + letter(choice.choices().size() - 1);
        }
        if (forecast.answer() instanceof Answer.Curve curve) {
            return DrawnPoints.form(curve);
        }
        Answer.Amount amount = (Answer.Amount) forecast.answer();
        return "a number" + (amount.unit().isEmpty() ? "" : " in " + amount.unit());
    }

    private boolean understood(String line) {
        if (forecast.answer() instanceof Answer.Choice choice) {
            int index = line.length() == 1 ? line.charAt(0) - 'a' : -1;
            if (index < 0 || index >= choice.choices().size()) {
                return false;
            }
            reply = Optional.of(choice.choices().get(index));
            said = Optional.of(new Said.Choice(index, choice.choices().get(index)));
            right = index == choice.right();
            return true;
        }
        if (forecast.answer() instanceof Answer.Curve curve) {
            points = DrawnPoints.read(curve, line);
            reply = points.map(DrawnPoints::words);
            said = points.map(DrawnPoints::said);
            return points.isPresent();
        }
        Answer.Amount amount = (Answer.Amount) forecast.answer();
        OptionalDouble number = number(line, amount.unit());
        number.ifPresent(
                value -> {
                    reply = Optional.of(spoken(value, amount.unit()));
                    said = Optional.of(new Said.Typed(line));
                    right = Math.abs(value - amount.value()) <= amount.within();
                });
        return number.isPresent();
    }

    private static OptionalDouble number(String line, String unit) {
        String low = unit.toLowerCase(Locale.ROOT);
        String bare = line.endsWith(low) ? line.substring(0, line.length() - low.length()) : line;
        String plain = bare.strip().replace(',', '.').replace('−', '-').replace('–', '-');
        return plain.matches("[+-]?(\\d{1,15}(\\.\\d{0,15})?|\\.\\d{1,15})")
                ? OptionalDouble.of(Double.parseDouble(plain))
                : OptionalDouble.empty();
    }

    private static String spoken(double value, String unit) {
        return Require.spoken(value) + (unit.isEmpty() ? "" : " " + unit);
    }

    /**
     * After the run: what was said, what is right, and why.
     *
     * @param figures what the run drew
     * @param screen takes it
     */
    void reveal(List<Figure> figures, Screen screen) {
        String answer = "The answer: " + rightAnswer(figures) + ".";
        String said =
                reply.map(words -> "You said: " + words + (right ? ". That is right. " : ". "))
                        .orElse("");
        screen.tell(said + (right && forecast.answer() instanceof Answer.Choice ? "" : answer));
        screen.say("");
        List<String> explanation = ProseText.set(forecast.explanation(), screen.width());
        if (!explanation.isEmpty()) {
            explanation.forEach(screen::say);
            screen.say("");
        }
    }

    private String rightAnswer(List<Figure> figures) {
        if (forecast.answer() instanceof Answer.Choice choice) {
            return choice.choices().get(choice.right());
        }
        if (forecast.answer() instanceof Answer.Amount amount) {
            return "%s; within %s counts as right"
                    .formatted(
                            spoken(amount.value(), amount.unit()), Require.spoken(amount.within()));
        }
        if (forecast.answer() instanceof Answer.Curve) {
            String beside =
                    figures.stream()
                            .flatMap(figure -> figure.series().stream())
                            .filter(Series.Curve.class::isInstance)
                            .findFirst()
                            .flatMap(first -> points.map(one -> one.beside((Series.Curve) first)))
                            .orElse("");
            return beside.isEmpty() ? "the first curve of the result" : beside;
        }
        throw new AssertionError(forecast.answer());
    }
}
