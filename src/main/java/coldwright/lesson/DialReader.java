package coldwright.lesson;

import static coldwright.lesson.FaultList.require;
import static coldwright.lesson.FaultList.text;

import coldwright.source.JavaSource;
import coldwright.source.JavaToken;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the dials of a snippet: {@code double sugar = 120; // dial 0 to 300 step 5 g}. */
final class DialReader {
    private static final String EXAMPLE = "`double sugar = 120; // dial 0 to 300 step 5 g`";
    private static final String NUMBER = "(" + NumberParser.PATTERN + ")";
    private static final Pattern RANGE =
            Pattern.compile(
                    NUMBER + "\\s+to\\s+" + NUMBER + "\\s+step\\s+" + NUMBER + "\\s*([^\\d.,].*)?");
    private static final Pattern DIAL = Pattern.compile("//\\s*(\\p{L}+)(.*)", Pattern.DOTALL);
    private static final String NAME = "[\\p{L}_$][\\p{L}\\p{N}_$]*";
    private static final Pattern DECLARATION =
            Pattern.compile(
                    "\\s*(?:final\\s+)?(?<type>[\\p{L}_$][\\p{L}\\p{N}_$.<>\\[\\]]*)\\s+(?<name>"
                            + NAME
                            + ")\\s*=\\s*(?<value>.*?)\\s*;\\s*");
    private static final Pattern LITERAL =
            Pattern.compile(
                    "[+-]?\\s*(?!0[\\d_]+$)(?:\\d[\\d_]*(?:\\.[\\d_]*)?|\\.\\d[\\d_]*)(?:[eE][+-]?\\d+)?[dD]?");
    private static final int LONGEST_DECLARATION = 500;
    private static final Set<String> TURNABLE = Set.of("double", "int");

    private final String code;
    private final IntUnaryOperator lineInFile;
    private int line;
    private int counted;
    private final FaultList faults;

    private DialReader(String code, IntUnaryOperator lineInFile, FaultList faults) {
        this.code = code;
        this.lineInFile = lineInFile;
        this.faults = faults;
    }

    /** The valid dials; {@code lineInFile} maps a line of the code, from 0, to the file's. */
    static List<Dial> read(String code, IntUnaryOperator lineInFile, FaultList faults) {
        DialReader reader = new DialReader(code, lineInFile, faults);
        List<Dial> dials = new ArrayList<>();
        int depth = 0;
        for (JavaToken token : JavaSource.of(code).tokens()) {
            switch (token.kind()) {
                case OPEN -> depth++;
                case CLOSE -> depth--;
                case LINE_COMMENT -> reader.dial(token, depth).ifPresent(dials::add);
                default -> {}
            }
        }
        return dials;
    }

    private Optional<Dial> dial(JavaToken comment, int depth) {
        int lineStart = code.lastIndexOf('\n', comment.start()) + 1;
        String before = code.substring(lineStart, comment.start());
        Matcher said = DIAL.matcher(code.substring(comment.start(), comment.end()));
        if (!said.matches()) {
            return Optional.empty();
        }
        String word = said.group(1);
        Matcher range = RANGE.matcher(said.group(2).strip());
        int here = lineAt(lineStart);
        if (!word.equals("dial")) {
            if (range.matches()) {
                faults.add(here, text("dial.word", word, said.group(2).strip()));
            }
            return Optional.empty();
        }
        Matcher declaration =
                DECLARATION.matcher(before.length() > LONGEST_DECLARATION ? "" : before);
        if (!declaration.matches()) {
            if (range.matches() || !before.isBlank()) {
                faults.add(here, text("dial.no-declaration", EXAMPLE));
            }
            return Optional.empty();
        }
        boolean commas = NumberParser.hasComma(said.group(2));
        return faults.read(
                here,
                () -> {
                    requireDeclaration(declaration, depth);
                    String name = declaration.group("name");
                    require(range.matches() || !commas, "dial.comma", name);
                    require(range.matches(), "dial.no-range", name, EXAMPLE);
                    Dial dial = made(declaration, range, lineStart);
                    requireRange(dial, declaration.group("type").equals("int"));
                    return dial;
                });
    }

    /** Continues from the last line requested, because comments come in order. */
    private int lineAt(int place) {
        while (counted < place) {
            line += code.charAt(counted++) == '\n' ? 1 : 0;
        }
        return lineInFile.applyAsInt(line);
    }

    private static void requireDeclaration(Matcher declaration, int depth) {
        String type = declaration.group("type");
        String name = declaration.group("name");
        String literal = declaration.group("value");
        require(TURNABLE.contains(type), "dial.type", type, name);
        require(depth <= 0, "dial.in-brackets", name);
        require(!literal.matches(".*,.*=.*"), "dial.several", name);
        require(LITERAL.matcher(literal).matches(), "dial.start", name, literal);
    }

    private static void requireRange(Dial dial, boolean whole) {
        String name = dial.variable();
        double least = dial.least();
        double most = dial.most();
        double step = dial.step();
        double value = dial.value();
        require(least < most, "dial.reversed", name, least, most);
        require(step > 0, "dial.step", name, step);
        require(step <= most - least, "dial.step-large", name, step);
        require(value >= least && value <= most, "dial.outside", name, value, least, most);
        boolean fits = isWhole(least) && isWhole(step) && isWhole(value);
        require(fits || !whole, "dial.whole", name);
    }

    private static Dial made(Matcher declaration, Matcher range, int lineStart) {
        String unit = range.group(4) == null ? "" : range.group(4).strip();
        return new Dial(
                declaration.group("name"),
                lineStart + declaration.start("value"),
                lineStart + declaration.end("value"),
                numberOf(declaration.group("value")),
                NumberParser.parse(range.group(1)),
                NumberParser.parse(range.group(2)),
                NumberParser.parse(range.group(3)),
                unit);
    }

    private static double numberOf(String literal) {
        return NumberParser.parse(literal.replaceAll("[dD]$", ""));
    }

    private static boolean isWhole(double value) {
        return value == Math.rint(value);
    }
}
