package coldwright.lesson;

import static coldwright.lesson.FaultList.text;

import coldwright.source.JavaSource;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

    private final FaultList faults;

    private CheckReader(FaultList faults) {
        this.faults = faults;
    }

    /**
     * Reads a check block.
     *
     * @param text the text between its fences
     * @param lineInFile maps a line of the text, from 0, to its line in the file; −1 is the fence
     * @param faults collects the faults
     * @return the valid lines
     */
    static List<CheckExpectation> read(String text, IntUnaryOperator lineInFile, FaultList faults) {
        CheckReader reader = new CheckReader(faults);
        List<CheckExpectation> expectations = new ArrayList<>();
        boolean nothing = true;
        String[] lines = text.split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            String one = lines[i].strip();
            if (!one.isEmpty() && !one.startsWith("//")) {
                nothing = false;
                reader.expectation(lineInFile.applyAsInt(i), one).ifPresent(expectations::add);
            }
        }
        if (nothing) {
            faults.add(lineInFile.applyAsInt(-1), text("check.empty", EXAMPLE));
        }
        return expectations;
    }

    private Optional<CheckExpectation> expectation(int line, String text) {
        if (text.length() > LONGEST_LINE) {
            faults.add(line, text("check.long", text.length(), LONGEST_LINE));
            return Optional.empty();
        }
        int mark = JavaSource.of(text).unquoted(SOURCE_MARK).stream().findFirst().orElse(-1);
        String claim = mark < 0 ? text : text.substring(0, mark).strip();
        String source = mark < 0 ? "" : text.substring(mark + SOURCE_MARK.length()).strip();
        List<Integer> places = JavaSource.of(" " + claim).unquoted(IS);
        if (places.isEmpty()) {
            faults.add(line, text("check.no-is", EXAMPLE));
            return Optional.empty();
        }
        int last = places.get(places.size() - 1);
        String expression = (" " + claim).substring(0, last).strip();
        String wanted = (" " + claim).substring(last + IS.length()).strip();
        if (!JavaSource.of(expression).isBalanced()) {
            faults.add(line, text("check.brackets", expression));
            return Optional.empty();
        }
        if (!JavaSource.of(expression).namesSomething()) {
            faults.add(line, text("check.no-name", EXAMPLE));
            return Optional.empty();
        }
        if (wanted.equals("true")) {
            return Optional.of(new CheckExpectation.True(line, expression, source));
        }
        Matcher value = VALUE.matcher(wanted);
        if (!value.matches()) {
            faults.add(line, faultOf(expression, wanted));
            return Optional.empty();
        }
        double tolerance = NumberParser.parse(value.group(2));
        if (tolerance < 0) {
            faults.add(line, text("check.negative", NumberParser.format(tolerance)));
            return Optional.empty();
        }
        return Optional.of(
                new CheckExpectation.Value(
                        line, expression, NumberParser.parse(value.group(1)), tolerance, source));
    }

    private static String faultOf(String expression, String wanted) {
        Matcher unit = WITH_UNIT.matcher(wanted);
        if (wanted.equals("false")) {
            return text("check.false", expression);
        }
        if (NumberParser.hasComma(wanted)) {
            return text("comma", wanted);
        }
        if (unit.matches()) {
            return text("check.unit", wanted, unit.group(1), unit.group(3));
        }
        Matcher tolerance = BAD_TOLERANCE.matcher(wanted);
        if (tolerance.matches()) {
            return text("check.tolerance", tolerance.group(2), tolerance.group(1));
        }
        Matcher alone = NUMBER_ALONE.matcher(wanted);
        if (alone.matches()) {
            return text("check.no-tolerance", alone.group(1));
        }
        return text("check.unfit", wanted, EXAMPLE);
    }
}
