package coldwright.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a check block: {@code EXPRESSION is VALUE within TOLERANCE -- source}, one a line. */
final class CheckReader {
    private static final String EXAMPLE = "`EXPRESSION is 12.5 within 0.1 -- source`";
    private static final String SOURCE_MARK = " -- ";
    private static final String IS = " is ";
    private static final String NUMBER = "(" + NumberText.PATTERN + ")";
    private static final Pattern VALUE = Pattern.compile(NUMBER + "\\s+within\\s+" + NUMBER);
    private static final Pattern NUMBER_ALONE = Pattern.compile(NUMBER + "(.*)");
    private static final Pattern WITH_UNIT =
            Pattern.compile(NUMBER + "(.*?)\\s+within\\s+" + NUMBER + "(.*)");
    private static final Pattern A_NAME =
            Pattern.compile("(?<![\\p{L}\\p{N}_$.])(?!(?:true|false|null)\\b)[\\p{L}_$]");

    private final FaultList faults;

    private CheckReader(FaultList faults) {
        this.faults = faults;
    }

    /**
     * Reads a check block.
     *
     * @param text what stands between its fences
     * @param firstLine the line in the file on which the text begins
     * @param faults takes what is wrong
     * @return the lines that can be used
     */
    static List<Expectation> read(String text, int firstLine, FaultList faults) {
        CheckReader reader = new CheckReader(faults);
        List<Expectation> expectations = new ArrayList<>();
        boolean nothing = true;
        int line = firstLine;
        for (String one : text.split("\n", -1)) {
            if (!one.isBlank() && !one.strip().startsWith("//")) {
                nothing = false;
                reader.expectation(line, one.strip()).ifPresent(expectations::add);
            }
            line++;
        }
        if (nothing) {
            faults.add(
                    firstLine - 1,
                    "the check names nothing; write a line such as " + EXAMPLE + " or take it out");
        }
        return expectations;
    }

    private Optional<Expectation> expectation(int line, String text) {
        int mark = JavaText.placesOf(SOURCE_MARK, text).stream().findFirst().orElse(-1);
        String claim = mark < 0 ? text : text.substring(0, mark).strip();
        String source = mark < 0 ? "" : text.substring(mark + SOURCE_MARK.length()).strip();
        List<Integer> places = JavaText.placesOf(IS, " " + claim);
        if (places.isEmpty()) {
            faults.add(line, "the check line has no \" is \" in it; write it like " + EXAMPLE);
            return Optional.empty();
        }
        int last = places.get(places.size() - 1);
        String expression = (" " + claim).substring(0, last).strip();
        String wanted = (" " + claim).substring(last + IS.length()).strip();
        if (!A_NAME.matcher(JavaText.withoutLiterals(expression)).find()) {
            faults.add(
                    line,
                    "the check line names nothing that a snippet made; put an expression before \"is\", as in "
                            + EXAMPLE);
            return Optional.empty();
        }
        if (wanted.equals("true")) {
            return Optional.of(new Expectation.True(line, expression, source));
        }
        Matcher value = VALUE.matcher(wanted);
        if (!value.matches()) {
            faults.add(line, faultOf(expression, wanted));
            return Optional.empty();
        }
        double tolerance = NumberText.parse(value.group(2));
        if (tolerance < 0) {
            faults.add(
                    line,
                    "the tolerance is %s; it must be zero or more: leave out its sign"
                            .formatted(NumberText.spoken(tolerance)));
            return Optional.empty();
        }
        return Optional.of(
                new Expectation.Value(
                        line, expression, NumberText.parse(value.group(1)), tolerance, source));
    }

    private static String faultOf(String expression, String wanted) {
        Matcher unit = WITH_UNIT.matcher(wanted);
        if (wanted.equals("false")) {
            return "a check line can't end in \"is false\"; write `!(%s) is true`"
                    .formatted(expression);
        }
        if (wanted.matches("[+−-]?\\d+,\\d.*")) {
            return "\"%s\" has a decimal comma; write numbers with a point".formatted(wanted);
        }
        if (unit.matches()) {
            return "\"%s\" holds more than two numbers; write `%s within %s` without a unit"
                    .formatted(wanted, unit.group(1), unit.group(3));
        }
        Matcher alone = NUMBER_ALONE.matcher(wanted);
        if (alone.matches()) {
            return "the check line has no tolerance; write how far off is allowed, such as `is %s within 0.01`"
                    .formatted(alone.group(1));
        }
        return "\"%s\" is neither `true` nor a number within a tolerance; write the line like %s"
                .formatted(wanted, EXAMPLE);
    }
}
