package coldwright.lesson;

import static coldwright.lesson.FaultList.text;

import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Parses a lesson and closes the blocks that its author forgot to close, so that one missing fence
 * doesn't swallow the rest. Each repair is reported as a fault.
 */
final class BlockCloser {
    private static final Pattern FENCE = Pattern.compile(" {0,3}(`{3,}|~{3,})(.*)");
    private static final Pattern HEADING = Pattern.compile("##? +\\S.*");
    private static final String COMMENT_START = "<!--";
    private static final String COMMENT_END = "-->";

    /** The text is parsed again for each repair; a lesson needs one or two, this limits them. */
    private static final int MOST_REPAIRS = 20;

    private static final int MOST_CHARACTERS_PARSED = 4_000_000;

    private final Parser parser = LessonReader.parser();
    private final List<String> lines;
    private final List<Integer> origins = new ArrayList<>();
    private final FaultList faults;

    private BlockCloser(String text, FaultList faults) {
        lines = new ArrayList<>(Arrays.asList(text.split("\r\n|\n|\r", -1)));
        IntStream.rangeClosed(1, lines.size()).forEach(origins::add);
        this.faults = faults;
    }

    /**
     * A parsed lesson with all blocks closed; for each of its lines the line in the file, from 1.
     */
    record Closed(Node document, List<Integer> origins) {
        /** The line in the file, from 1, of a parsed line, from 0. */
        int lineInFile(int index) {
            return origins.get(Math.min(index, origins.size() - 1));
        }
    }

    static Closed close(String text, FaultList faults) {
        BlockCloser blocks = new BlockCloser(text, faults);
        int most = Math.min(MOST_REPAIRS, 1 + MOST_CHARACTERS_PARSED / (1 + text.length()));
        Node document = blocks.parse();
        int from = 0;
        for (int i = 0; i < most && from >= 0; i++) {
            from = blocks.closeFirst(document, from);
            if (from >= 0) {
                document = blocks.parse();
            }
        }
        return new Closed(document, blocks.origins);
    }

    private Node parse() {
        return parser.parse(String.join("\n", lines));
    }

    /** Closes the first broken block from a line on; returns the line to continue from, or −1. */
    private int closeFirst(Node document, int from) {
        for (Node block = document.getFirstChild(); block != null; block = block.getNext()) {
            int start = block.getSourceSpans().get(0).getLineIndex();
            int closed = -1;
            if (start >= from && block instanceof FencedCodeBlock code) {
                closed = closeFence(code, start);
            } else if (start >= from && ProseCleaner.isComment(block)) {
                closed = closeComment((HtmlBlock) block, start);
            }
            if (closed >= 0) {
                return closed;
            }
        }
        return -1;
    }

    private int closeFence(FencedCodeBlock block, int start) {
        String fence = block.getFenceCharacter().repeat(block.getOpeningFenceLength());
        String info = block.getInfo().strip();
        int end = start + 1 + (int) block.getLiteral().lines().count();
        int another = first(start + 1, end, line -> opensAnother(fence, line));
        int heading = first(start + 1, end, line -> HEADING.matcher(line).matches());
        int swallowed = Math.min(another, heading);
        boolean closed = block.getClosingFenceLength() != null;
        boolean swallows = info.isEmpty() ? another < end : swallowed < end;
        if (closed && !swallows) {
            return -1;
        }
        if (closed && another >= end && BlockKind.of(info).equals(Optional.of(BlockKind.TEACHER))) {
            faults.add(origins.get(heading), text("heading.in-teacher"));
            return -1;
        }
        faults.add(
                origins.get(start),
                text(
                        "block.open",
                        info.isEmpty() ? text("a-block") : text("a-kind-of-block", info),
                        fence));
        return swallowed < end ? insert(swallowed, fence) : -1;
    }

    private int closeComment(HtmlBlock comment, int start) {
        int end = start + (int) comment.getLiteral().lines().count();
        int another = first(start + 1, end, line -> line.strip().startsWith(COMMENT_START));
        boolean closed = comment.getLiteral().contains(COMMENT_END);
        if (closed && another == end) {
            return -1;
        }
        faults.add(origins.get(start), text("comment.open", COMMENT_END));
        int blank = first(start + 1, end, String::isBlank);
        int place = Math.min(blank, another);
        return place < end ? insert(place, COMMENT_END) : -1;
    }

    /** The first line of this kind, or the end. */
    private int first(int from, int end, Predicate<String> sign) {
        for (int i = from; i < Math.min(end, lines.size()); i++) {
            if (sign.test(lines.get(i))) {
                return i;
            }
        }
        return end;
    }

    private static boolean opensAnother(String fence, String line) {
        Matcher other = FENCE.matcher(line);
        return other.matches()
                && other.group(1).startsWith(fence)
                && !other.group(2).isBlank()
                && (fence.startsWith("~") || other.group(2).indexOf('`') < 0);
    }

    /** Inserts a line that the file doesn't have; it gets the number of the line before it. */
    private int insert(int place, String line) {
        lines.add(place, line);
        origins.add(place, origins.get(place - 1));
        return place;
    }
}
