package coldwright.lesson;

import static coldwright.lesson.FaultList.text;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the axes for drawing a predicted curve: {@code sucrose 0 to 40 %; ice −12 to 0 °C}. */
final class CurveAxesReader {
    static final String EXAMPLE = "`curve: sucrose 0 to 40 %; freezing point −12 to 0 °C`";

    private static final int LONGEST_AXIS = 100;
    private static final Pattern SCALE =
            Pattern.compile(
                    "(?:(.*?\\S)\\s+)??(%1$s)\\s+to\\s+(%1$s)\\s*([^\\d.,\\s].*)?"
                            .formatted(NumberParser.PATTERN));

    private final int line;
    private final FaultList faults;

    private CurveAxesReader(int line, FaultList faults) {
        this.line = line;
        this.faults = faults;
    }

    /**
     * Reads both axes.
     *
     * @param text the text after {@code curve:}
     * @param line its line in the file
     * @param faults collects the faults
     * @return the axes, if valid
     */
    static Optional<ExpectedAnswer> read(String text, int line, FaultList faults) {
        CurveAxesReader reader = new CurveAxesReader(line, faults);
        String[] halves = text.split(";", -1);
        if (halves.length != 2) {
            return reader.fault(text("curve.semicolons", halves.length - 1, EXAMPLE));
        }
        Optional<ExpectedAnswer.Scale> level = reader.scale("x", halves[0].strip());
        Optional<ExpectedAnswer.Scale> upright = reader.scale("y", halves[1].strip());
        return level.isEmpty() || upright.isEmpty()
                ? Optional.empty()
                : Optional.of(new ExpectedAnswer.Curve(level.get(), upright.get()));
    }

    private Optional<ExpectedAnswer.Scale> scale(String which, String text) {
        Matcher said = SCALE.matcher(text);
        if (NumberParser.hasComma(text) && !said.matches()) {
            return fault(text("axis.comma", which, text));
        }
        if (text.length() > LONGEST_AXIS || !said.matches()) {
            return fault(text("axis.unfit", which, text));
        }
        double from = NumberParser.parse(said.group(2));
        double to = NumberParser.parse(said.group(3));
        if (said.group(1) == null) {
            return fault(text("axis.no-label", which, text));
        }
        if (!(from < to) || Double.isInfinite(to - from)) {
            return fault(
                    text(
                            "axis.reversed",
                            which,
                            NumberParser.format(from),
                            NumberParser.format(to)));
        }
        String unit = said.group(4) == null ? "" : said.group(4).strip();
        return Optional.of(new ExpectedAnswer.Scale(said.group(1), from, to, unit));
    }

    private <T> Optional<T> fault(String words) {
        faults.add(line, words);
        return Optional.empty();
    }
}
