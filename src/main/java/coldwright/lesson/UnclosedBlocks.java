package coldwright.lesson;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Closes what an author forgot to close, so that one missing fence does not swallow the rest of the
 * lesson. Each mended place is told as a fault.
 */
final class UnclosedBlocks {
    private static final Pattern FENCE = Pattern.compile(" {0,3}(`{3,}|~{3,})(.*)");
    private static final Pattern HEADING = Pattern.compile("##? +\\S.*");
    private static final Pattern COMMENT = Pattern.compile(" {0,3}<!--.*");
    private static final String COMMENT_END = "-->";

    /** Most places that are mended by reading a part again; a lesson has one or two. */
    private static final int MOST_SECOND_LOOKS = 20;

    private final List<String> lines;
    private final FaultList faults;
    private final List<String> mended = new ArrayList<>();
    private final List<Integer> origins = new ArrayList<>();
    private int secondLooks;
    private int at;

    private UnclosedBlocks(String text, FaultList faults) {
        this.lines = Arrays.asList(text.split("\r\n|\n|\r", -1));
        this.faults = faults;
    }

    /**
     * A lesson's text with its blocks closed.
     *
     * @param text the text to parse
     * @param origins for each of its lines, the line in the file, from 1
     */
    record Closed(String text, List<Integer> origins) {
        /** The line in the file, from 1, of a line of the text, from 0. */
        int lineInFile(int index) {
            return origins.get(Math.min(index, origins.size() - 1));
        }
    }

    static Closed close(String text, FaultList faults) {
        UnclosedBlocks blocks = new UnclosedBlocks(text, faults);
        blocks.readAll();
        return new Closed(String.join("\n", blocks.mended), blocks.origins);
    }

    private void readAll() {
        while (at < lines.size()) {
            String line = lines.get(at);
            Matcher fence = FENCE.matcher(line);
            if (COMMENT.matcher(line).matches()) {
                readComment();
            } else if (fence.matches() && opens(fence)) {
                readBlock(fence.group(1), fence.group(2).strip());
            } else {
                keep(line);
            }
        }
    }

    private static boolean opens(Matcher fence) {
        return fence.group(1).startsWith("~") || fence.group(2).indexOf('`') < 0;
    }

    private void readComment() {
        int opened = at;
        if (lines.get(at).contains(COMMENT_END)) {
            keep(lines.get(at));
            return;
        }
        int end = at + 1;
        while (end < lines.size()
                && !lines.get(end).contains(COMMENT_END)
                && !COMMENT.matcher(lines.get(end)).matches()) {
            end++;
        }
        boolean closed = end < lines.size() && lines.get(end).contains(COMMENT_END);
        if (closed) {
            keepUpTo(end + 1);
            return;
        }
        faults.add(
                opened + 1, "the comment opened here is never closed; end it with " + COMMENT_END);
        do {
            keep(lines.get(at));
        } while (at < end && !lines.get(at).isBlank());
        insert(COMMENT_END);
    }

    private void readBlock(String fence, String info) {
        int opened = at;
        Optional<Integer> swallowed = Optional.empty();
        int end = at + 1;
        while (end < lines.size() && !closes(fence, lines.get(end))) {
            if (swallowed.isEmpty() && swallows(fence, lines.get(end))) {
                swallowed = Optional.of(end);
                if (!info.isEmpty()) {
                    break;
                }
            }
            end++;
        }
        boolean closed = end < lines.size() && closes(fence, lines.get(end));
        if (closed) {
            keepUpTo(end + 1);
            return;
        }
        String name = info.isEmpty() ? "block" : "`" + info + "` block";
        faults.add(
                opened + 1,
                "the %s opened here is never closed; put %s on a line of its own behind its last line"
                        .formatted(name, fence));
        if (swallowed.isPresent() && secondLooks < MOST_SECOND_LOOKS) {
            secondLooks++;
            keepUpTo(swallowed.get());
        } else {
            keepUpTo(lines.size());
        }
        insert(fence);
    }

    private static boolean closes(String fence, String line) {
        Matcher other = FENCE.matcher(line);
        return other.matches() && other.group(1).startsWith(fence) && other.group(2).isBlank();
    }

    private static boolean swallows(String fence, String line) {
        Matcher other = FENCE.matcher(line);
        boolean opensAnother = other.matches() && other.group(1).startsWith(fence);
        return opensAnother || HEADING.matcher(line).matches();
    }

    private void keepUpTo(int end) {
        while (at < end) {
            keep(lines.get(at));
        }
    }

    private void keep(String line) {
        mended.add(line);
        at++;
        origins.add(at);
    }

    /** A line that the file doesn't have; it counts as part of the line before it. */
    private void insert(String line) {
        mended.add(line);
        origins.add(Math.max(1, at));
    }
}
