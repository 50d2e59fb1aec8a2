package coldwright.lesson;

import static coldwright.lesson.FaultList.text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a prediction block: the question, then the answers, then the explanation. */
final class PredictionReader {
    private static final int LONGEST_NUMBER = 200;
    private static final String CURVE = "curve:";
    private static final String RIGHT = "- * ";
    private static final Pattern NUMBER =
            Pattern.compile(
                    "number:\\s*(%1$s)\\s*([^\\d.,\\s].*?)?\\s+within\\s+(%1$s)\\s*([^\\d.,].*)?"
                            .formatted(NumberParser.PATTERN));

    private final IntUnaryOperator lineInFile;
    private final FaultList faults;
    private final List<String> question = new ArrayList<>();
    private final List<String> choices = new ArrayList<>();
    private final List<Integer> right = new ArrayList<>();
    private final List<String> numbers = new ArrayList<>();
    private final List<String> curves = new ArrayList<>();
    private int numberLine;

    private PredictionReader(IntUnaryOperator lineInFile, FaultList faults) {
        this.lineInFile = lineInFile;
        this.faults = faults;
    }

    /**
     * Reads a prediction block.
     *
     * @param text the text between its fences
     * @param lineInFile maps a line of the text, from 0, to its line in the file; −1 is the fence
     * @param faults collects the faults
     * @return the prediction, if valid
     */
    static Optional<LessonPart.Prediction> read(
            String text, IntUnaryOperator lineInFile, FaultList faults) {
        String[] lines = text.split("\n", -1);
        PredictionReader reader = new PredictionReader(lineInFile, faults);
        int end = reader.readUntilExplanation(lines);
        String explanation = String.join("\n", List.of(lines).subList(end, lines.length));
        Optional<ExpectedAnswer> answer = reader.answer();
        if (answer.isEmpty()) {
            return Optional.empty();
        }
        ExplainedBlock after =
                ExplainedBlock.of(explanation, i -> lineInFile.applyAsInt(end + i), faults);
        return Optional.of(
                new LessonPart.Prediction(
                        lineInFile.applyAsInt(-1),
                        String.join(" ", reader.question),
                        answer.get(),
                        after.nodes(),
                        after.verifiedNumbers()));
    }

    private int readUntilExplanation(String[] lines) {
        for (int i = 0; i < lines.length; i++) {
            String line = withoutVerifiedNumbers(lines[i].strip(), lineInFile.applyAsInt(i));
            boolean answered = !choices.isEmpty() || !numbers.isEmpty() || !curves.isEmpty();
            if (line.isEmpty()) {
                if (answered) {
                    return i;
                }
            } else if (isChoice(line)) {
                choice(line);
            } else if (line.startsWith("number:")) {
                numbers.add(line);
                numberLine = lineInFile.applyAsInt(i);
            } else if (line.startsWith(CURVE)) {
                curves.add(line.substring(CURVE.length()));
                numberLine = lineInFile.applyAsInt(i);
            } else if (!answered) {
                question.add(line);
            } else if (!choices.isEmpty() && Character.isWhitespace(lines[i].charAt(0))) {
                int last = choices.size() - 1;
                choices.set(last, choices.get(last) + " " + line);
            } else {
                faults.add(lineInFile.applyAsInt(i), text("prediction.line"));
                return i;
            }
        }
        return lines.length;
    }

    /**
     * Removes verified numbers' comments, which would be visible in questions and choices because
     * these aren't CommonMark.
     */
    private String withoutVerifiedNumbers(String line, int place) {
        String without = VerifiedNumberReader.without(line);
        if (!without.equals(line)) {
            faults.add(place, text("prediction.number"));
        }
        return without;
    }

    private static boolean isChoice(String line) {
        return line.equals("-") || line.startsWith("- ");
    }

    private void choice(String line) {
        boolean marked = line.startsWith(RIGHT) || line.equals(RIGHT.strip());
        if (marked) {
            right.add(choices.size());
        }
        choices.add(line.substring(marked ? 3 : 1).strip());
    }

    private Optional<ExpectedAnswer> answer() {
        Optional<String> fault = faultOfShape();
        if (fault.isPresent()) {
            faults.add(lineInFile.applyAsInt(-1), fault.get());
            return Optional.empty();
        }
        if (!curves.isEmpty()) {
            return CurveAxesReader.read(curves.get(0), numberLine, faults);
        }
        return numbers.isEmpty()
                ? Optional.of(new ExpectedAnswer.Choice(choices, right.get(0)))
                : number(numbers.get(0));
    }

    private Optional<String> faultOfShape() {
        if (question.isEmpty()) {
            return Optional.of(text("prediction.no-question"));
        }
        int lines = numbers.size() + curves.size();
        if (choices.isEmpty() && lines == 0) {
            return Optional.of(text("prediction.no-answer"));
        }
        if (lines > 0) {
            return lines == 1 && choices.isEmpty()
                    ? Optional.empty()
                    : Optional.of(text("prediction.several-ways"));
        }
        if (choices.contains("")) {
            return Optional.of(text("choice.empty"));
        }
        if (choices.size() < 2) {
            return Optional.of(text("choice.one"));
        }
        if (new HashSet<>(choices).size() < choices.size()) {
            return Optional.of(text("choice.same"));
        }
        if (right.isEmpty()) {
            return Optional.of(text("choice.none-right"));
        }
        if (right.size() > 1) {
            return Optional.of(text("choice.many-right", right.size()));
        }
        return Optional.empty();
    }

    private Optional<ExpectedAnswer> number(String line) {
        Matcher said = NUMBER.matcher(line);
        if (NumberParser.hasComma(line) && !said.matches()) {
            faults.add(numberLine, text("comma", line));
            return Optional.empty();
        }
        if (said.matches() && NumberParser.parse(said.group(3)) < 0) {
            faults.add(numberLine, text("number.negative", line));
            return Optional.empty();
        }
        if (line.length() > LONGEST_NUMBER || !said.matches()) {
            faults.add(numberLine, text("number.unfit", line));
            return Optional.empty();
        }
        String unit = said.group(2) == null ? "" : said.group(2).strip();
        return Optional.of(
                new ExpectedAnswer.Amount(
                        NumberParser.parse(said.group(1)),
                        unit,
                        NumberParser.parse(said.group(3))));
    }
}
