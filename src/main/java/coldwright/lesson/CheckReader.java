package coldwright.lesson;

import static coldwright.lesson.FaultList.require;
import static coldwright.lesson.FaultList.text;
import static coldwright.lesson.FaultList.unusable;

import coldwright.source.JavaSource;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a check block: {@code EXPRESSION is VALUE within TOLERANCE -- source}, one per line. */
final class CheckReader {
    private static final String EXAMPLE = "`EXPRESSION is 12.5 within 0.1 -- source`";
    private static final String SOURCE_MARK = " -- ";
    private static final String IS = " is ";
    private static final int LONGEST_LINE = 1000;
    private static final String NUMBER = "(" + NumberParser.PATTERN + ")";
    private static final Pattern VALUE = Pattern.compile(NUMBER + "\\s+within\\s+" + NUMBER);
    private static final Pattern NUMBER_ALONE = Pattern.compile(NUMBER + "(.*)");
    private static final Pattern BAD_TOLERANCE = Pattern.compile(NUMBER + "\\s+within\\s+(.+)");
    private static final Pattern WITH_UNIT =
            Pattern.compile(NUMBER + "(.*?)\\s+within\\s+" + NUMBER + "(.*)");

    private CheckReader() {}

    /**
     * The valid lines of a check block; {@code lineInFile} maps a line of the text, from 0, to its
     * line in the file; −1 is the fence.
     */
    static List<CheckExpectation> read(String text, IntUnaryOperator lineInFile, FaultList faults) {
        List<CheckExpectation> expectations = new ArrayList<>();
        boolean nothing = true;
        String[] lines = text.split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            String one = lines[i].strip();
            int line = lineInFile.applyAsInt(i);
            if (!one.isEmpty() && !one.startsWith("//")) {
                nothing = false;
                faults.read(line, () -> expectation(line, one)).ifPresent(expectations::add);
            }
        }
        if (nothing) {
            faults.add(lineInFile.applyAsInt(-1), text("check.empty", EXAMPLE));
        }
        return expectations;
    }

    private static CheckExpectation expectation(int line, String text) {
        require(text.length() <= LONGEST_LINE, "check.long", text.length(), LONGEST_LINE);
        int mark = JavaSource.of(text).unquoted(SOURCE_MARK).stream().findFirst().orElse(-1);
        String claim = " " + (mark < 0 ? text : text.substring(0, mark).strip());
        String source = mark < 0 ? "" : text.substring(mark + SOURCE_MARK.length()).strip();
        List<Integer> places = JavaSource.of(claim).unquoted(IS);
        require(!places.isEmpty(), "check.no-is", EXAMPLE);
        int last = places.get(places.size() - 1);
        String expression = claim.substring(0, last).strip();
        String wanted = claim.substring(last + IS.length()).strip();
        require(JavaSource.of(expression).isBalanced(), "check.brackets", expression);
        require(JavaSource.of(expression).namesSomething(), "check.no-name", EXAMPLE);
        if (wanted.equals("true")) {
            return new CheckExpectation.True(line, expression, source);
        }
        Matcher value = VALUE.matcher(wanted);
        if (!value.matches()) {
            throw unfit(expression, wanted);
        }
        double tolerance = NumberParser.parse(value.group(2));
        require(tolerance >= 0, "check.negative", tolerance);
        return new CheckExpectation.Value(
                line, expression, NumberParser.parse(value.group(1)), tolerance, source);
    }

    private static FaultList.Unusable unfit(String expression, String wanted) {
        Matcher unit = WITH_UNIT.matcher(wanted);
        Matcher tolerance = BAD_TOLERANCE.matcher(wanted);
        Matcher alone = NUMBER_ALONE.matcher(wanted);
        require(!wanted.equals("false"), "check.false", expression);
        require(!NumberParser.hasComma(wanted), "comma", wanted);
        if (unit.matches()) {
            return unusable("check.unit", wanted, unit.group(1), unit.group(3));
        }
        if (tolerance.matches()) {
            return unusable("check.tolerance", tolerance.group(2), tolerance.group(1));
        }
        return alone.matches()
                ? unusable("check.no-tolerance", alone.group(1))
                : unusable("check.unfit", wanted, EXAMPLE);
    }
}
