package coldwright.lesson;

import static coldwright.lesson.FaultList.text;

import coldwright.source.JavaSource;
import coldwright.source.JavaToken;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lines of a snippet that are shown folded under a few words: from a comment {@code // aside: draws
 * the chart} to the next empty line or the end.
 *
 * @param firstLine the comment's line in the snippet, from 0
 * @param lastLine the last folded line, from 0
 * @param words what the lines do
 */
public record Aside(int firstLine, int lastLine, String words) {
    private static final Pattern MARK = Pattern.compile("//\\s*aside\\b(:\\s*(\\S.*))?.*");

    /** The folded lines of a snippet, in order; a mark with a mistake folds nothing. */
    public static List<Aside> in(String code) {
        return read(code, line -> line, new FaultList(""));
    }

    /** As above; {@code lineInFile} maps a line of the code, from 0, to the file's. */
    static List<Aside> read(String code, IntUnaryOperator lineInFile, FaultList faults) {
        String[] lines = code.split("\n", -1);
        List<Aside> found = new ArrayList<>();
        int foldedTo = -1;
        for (JavaToken token : JavaSource.of(code).tokens()) {
            Matcher mark = MARK.matcher(code.substring(token.start(), token.end()));
            if (token.kind() != JavaToken.Kind.LINE_COMMENT || !mark.matches()) {
                continue;
            }
            int first =
                    (int) code.substring(0, token.start()).chars().filter(c -> c == '\n').count();
            int last = first;
            while (last + 1 < lines.length && !lines[last + 1].isBlank()) {
                last++;
            }
            String fault = "";
            if (mark.group(2) == null) {
                fault = "aside.words";
            } else if (!lines[first].strip().startsWith("//")) {
                fault = "aside.own-line";
            } else if (first <= foldedTo) {
                fault = "aside.within";
            } else if (last == first) {
                fault = "aside.nothing";
            }
            if (fault.isEmpty()) {
                found.add(new Aside(first, last, mark.group(2).strip()));
                foldedTo = last;
            } else {
                faults.add(lineInFile.applyAsInt(first), text(fault));
            }
        }
        return found;
    }

    /** How many lines are folded, the comment not counted. */
    public int size() {
        return lastLine - firstLine;
    }
}
