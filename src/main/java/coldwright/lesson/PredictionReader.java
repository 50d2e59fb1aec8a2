package coldwright.lesson;

import static coldwright.lesson.FaultList.require;
import static coldwright.lesson.FaultList.text;

import org.commonmark.node.Node;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a prediction or a question: what is asked, then the answers, then the explanation. */
final class PredictionReader {
    private static final int LONGEST_NUMBER = 200;
    private static final String CURVE = "curve:";
    private static final String RIGHT = "- * ";
    private static final String BECAUSE = " -- ";
    private static final Pattern NUMBER =
            Pattern.compile(
                    "number:\\s*(%1$s)\\s*([^\\d.,\\s].*?)?\\s+within\\s+(%1$s)\\s*([^\\d.,].*)?"
                            .formatted(NumberParser.PATTERN));

    private final IntUnaryOperator lineInFile;
    private final FaultList faults;

    /** Whether no run answers it, so that several choices may be right, each with a reason. */
    private final boolean runless;

    private final List<String> question = new ArrayList<>();
    private final List<String> choices = new ArrayList<>();
    private final List<Integer> right = new ArrayList<>();

    /** The lines that begin with {@code number:} or {@code curve:}. */
    private final List<String> typed = new ArrayList<>();

    private int typedLine;

    private PredictionReader(IntUnaryOperator lineInFile, FaultList faults, boolean runless) {
        this.runless = runless;
        this.lineInFile = lineInFile;
        this.faults = faults;
    }

    /**
     * Reads a prediction block, or a question block.
     *
     * @param lineInFile maps a line of the text, from 0, to its line in the file; −1 is the fence
     * @param runless whether it is a question block, which no run answers
     * @param tried the verified numbers of a question block that can be tried where it is
     */
    static Optional<LessonPart.Asked> read(
            String text,
            IntUnaryOperator lineInFile,
            FaultList faults,
            boolean runless,
            UnaryOperator<List<VerifiedNumber>> tried) {
        String[] lines = text.split("\n", -1);
        PredictionReader reader = new PredictionReader(lineInFile, faults, runless);
        int end = reader.readUntilExplanation(lines);
        String explanation = String.join("\n", List.of(lines).subList(end, lines.length));
        ProseCleaner cleaner = new ProseCleaner(faults, i -> lineInFile.applyAsInt(end + i));
        int line = lineInFile.applyAsInt(-1);
        String question = String.join(" ", reader.question);
        return reader.answer(line)
                .map(
                        right -> {
                            List<Node> after = cleaner.blocks(explanation);
                            List<VerifiedNumber> numbers = cleaner.takeVerifiedNumbers();
                            return right instanceof ExpectedAnswer.Several several
                                    ? new LessonPart.Question(
                                            line, question, several, after, tried.apply(numbers))
                                    : new LessonPart.Prediction(
                                            line, question, right, after, numbers);
                        });
    }

    private int readUntilExplanation(String[] lines) {
        for (int i = 0; i < lines.length; i++) {
            String line = withoutVerifiedNumbers(lines[i].strip(), lineInFile.applyAsInt(i));
            boolean answered = !choices.isEmpty() || !typed.isEmpty();
            if (line.isEmpty()) {
                if (answered) {
                    return i;
                }
            } else if (isChoice(line)) {
                choice(line);
            } else if (!runless && (line.startsWith("number:") || line.startsWith(CURVE))) {
                typed.add(line);
                typedLine = lineInFile.applyAsInt(i);
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

    private String withoutReason(String choice) {
        return runless ? choice.split(BECAUSE, 2)[0].strip() : choice;
    }

    private Optional<ExpectedAnswer> answer(int fence) {
        if (faults.read(fence, this::requireOneWay).isEmpty()) {
            return Optional.empty();
        }
        if (choices.isEmpty()) {
            String line = typed.get(0);
            return faults.read(
                    typedLine,
                    () ->
                            line.startsWith(CURVE)
                                    ? CurveAxesReader.read(line.substring(CURVE.length()))
                                    : number(line));
        }
        return Optional.of(runless ? several() : new ExpectedAnswer.Choice(choices, right.get(0)));
    }

    /** Refuses a question without an answer, or with answers in more than one way. */
    private int requireOneWay() {
        require(!question.isEmpty(), "prediction.no-question");
        int lines = typed.size();
        String none = runless ? "question.no-choice" : "prediction.no-answer";
        require(!choices.isEmpty() || lines > 0, none);
        require(lines == 0 || lines == 1 && choices.isEmpty(), "prediction.several-ways");
        if (lines == 0) {
            long different = choices.stream().map(this::withoutReason).distinct().count();
            require(!choices.contains(""), "choice.empty");
            require(choices.size() > 1, "choice.one");
            require(different == choices.size(), "choice.same");
            require(!right.isEmpty(), "choice.none-right");
            require(right.size() == 1 || runless, "choice.many-right", right.size());
        }
        return lines;
    }

    private ExpectedAnswer several() {
        return new ExpectedAnswer.Several(
                choices.stream().map(this::withoutReason).toList(),
                choices.stream()
                        .map(one -> one.substring(withoutReason(one).length()))
                        .map(one -> one.replaceFirst(BECAUSE, "").strip())
                        .toList(),
                Set.copyOf(right));
    }

    private static ExpectedAnswer number(String line) {
        Matcher said = NUMBER.matcher(line);
        boolean fits = said.matches();
        require(fits || !NumberParser.hasComma(line), "comma", line);
        require(fits && line.length() <= LONGEST_NUMBER, "number.unfit", line);
        double within = NumberParser.parse(said.group(3));
        require(within >= 0, "number.negative", line);
        String unit = said.group(2) == null ? "" : said.group(2).strip();
        return new ExpectedAnswer.Amount(NumberParser.parse(said.group(1)), unit, within);
    }
}
