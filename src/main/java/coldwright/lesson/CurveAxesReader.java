package coldwright.lesson;

import static coldwright.lesson.FaultList.require;

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

    private CurveAxesReader() {}

    /** Reads both axes from the text after {@code curve:}; refuses what isn't two axes. */
    static ExpectedAnswer.Curve read(String text) {
        String[] halves = text.split(";", -1);
        require(halves.length == 2, "curve.semicolons", halves.length - 1, EXAMPLE);
        return new ExpectedAnswer.Curve(
                scale("x", halves[0].strip()), scale("y", halves[1].strip()));
    }

    private static ExpectedAnswer.Scale scale(String which, String text) {
        Matcher said = SCALE.matcher(text);
        require(said.matches() || !NumberParser.hasComma(text), "axis.comma", which, text);
        require(text.length() <= LONGEST_AXIS && said.matches(), "axis.unfit", which, text);
        double from = NumberParser.parse(said.group(2));
        double to = NumberParser.parse(said.group(3));
        require(said.group(1) != null, "axis.no-label", which, text);
        require(from < to && !Double.isInfinite(to - from), "axis.reversed", which, from, to);
        String unit = said.group(4) == null ? "" : said.group(4).strip();
        return new ExpectedAnswer.Scale(said.group(1), from, to, unit);
    }
}
