package coldwright.lesson;

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
                faults.add(
                        lineInFile.applyAsInt(i),
                        "this line of the forecast is neither an answer nor parted from them by an empty line; begin it with \"- \" or put an empty line above it");
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
            faults.add(
                    place,
                    "a question or a choice can't hold its number; take the comment out and hold the number in the explanation");
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
            return Optional.of("the forecast asks nothing; write the question on its first line");
        }
        int lines = numbers.size() + curves.size();
        if (choices.isEmpty() && lines == 0) {
            return Optional.of(
                    "the forecast has no answer to choose; write choices that begin with \"- \" or a line such as `number: 12.5 °C within 1`");
        }
        if (lines > 0) {
            return lines == 1 && choices.isEmpty()
                    ? Optional.empty()
                    : Optional.of(
                            "the forecast can be answered in more than one way; keep its choices or one line that begins `number:` or `curve:`");
        }
        if (choices.contains("")) {
            return Optional.of("a choice of the forecast is empty; write its words or take it out");
        }
        if (choices.size() < 2) {
            return Optional.of("the forecast has one choice only; write at least two");
        }
        if (new HashSet<>(choices).size() < choices.size()) {
            return Optional.of("two choices of the forecast are the same; change one of them");
        }
        if (right.isEmpty()) {
            return Optional.of("the forecast has no right answer; mark one choice with \"- * \"");
        }
        if (right.size() > 1) {
            return Optional.of(
                    "the forecast has %d right answers; mark one choice only with \"- * \""
                            .formatted(right.size()));
        }
        return Optional.empty();
    }

    private Optional<ExpectedAnswer> number(String line) {
        Matcher said = NUMBER.matcher(line);
        if (NumberParser.hasComma(line) && !said.matches()) {
            faults.add(
                    numberLine,
                    "\"%s\" has a decimal comma; write numbers with a point".formatted(line));
            return Optional.empty();
        }
        if (said.matches() && NumberParser.parse(said.group(3)) < 0) {
            faults.add(
                    numberLine,
                    "the tolerance of \"%s\" is less than zero; leave out its sign"
                            .formatted(line));
            return Optional.empty();
        }
        if (line.length() > LONGEST_NUMBER || !said.matches()) {
            faults.add(
                    numberLine,
                    "\"%s\" is no number with a tolerance; write it like `number: 12.5 °C within 1`"
                            .formatted(line));
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
