package coldwright.batch;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a batch stands in its row.
 *
 * @param number which batch it is, from 1
 * @param after the batch that it was made from; 0 for none
 * @param found what was wrong with it when it was tasted, in plain words
 * @param why what was wished or mended when it was made from the one before; empty if nothing
 * @param taken mends and wishes that were taken in it, in plain words, the first first
 */
public record BatchLineage(
        int number, int after, List<String> found, String why, List<String> taken) {
    /** What a file says that no window wrote: nothing. */
    static final BatchLineage NONE = first(0);

    private static final String PLACE = "# batch: ";
    private static final String FOUND = "# found: ";
    private static final String WHY = "# made for: ";
    private static final String TAKEN = "# taken: ";

    public BatchLineage {
        found = List.copyOf(found);
        taken = List.copyOf(taken);
    }

    /**
     * Where a batch stands in which nothing was taken yet.
     *
     * @param number which batch it is, from 1
     * @param after the batch that it was made from; 0 for none
     * @param found what was wrong with it, in plain words
     * @param why what was wished or mended; empty if nothing
     */
    public BatchLineage(int number, int after, List<String> found, String why) {
        this(number, after, found, why, List.of());
    }

    /** The first of a row. */
    public static BatchLineage first(int number) {
        return new BatchLineage(number, 0, List.of(), "");
    }

    /** The same, tasted. */
    public BatchLineage tasted(List<String> newFound) {
        return new BatchLineage(number, after, newFound, why, taken);
    }

    /** The same under another number. */
    public BatchLineage numbered(int newNumber, int newAfter) {
        return new BatchLineage(newNumber, newAfter, found, why, taken);
    }

    /** The same with a mend taken. */
    public BatchLineage withChange(String mend) {
        List<String> more = new ArrayList<>(taken);
        more.add(mend);
        return new BatchLineage(number, after, found, why, more);
    }

    /** The same with the mend that was taken last put back. */
    public BatchLineage putBack() {
        return taken.isEmpty()
                ? this
                : new BatchLineage(number, after, found, why, taken.subList(0, taken.size() - 1));
    }

    /** As comments in a recipe file, a line each. */
    List<String> comments() {
        List<String> lines = new ArrayList<>();
        lines.add(PLACE + number + " after " + after);
        found.forEach(one -> lines.add(FOUND + one));
        if (!why.isEmpty()) {
            lines.add(WHY + why);
        }
        taken.forEach(one -> lines.add(TAKEN + one));
        return lines;
    }

    /** The same with what a comment of a recipe file says of it; other comments say nothing. */
    BatchLineage with(String comment) {
        if (comment.matches("# batch: [0-9]{1,6} after [0-9]{1,6}")) {
            String[] words = comment.split(" ", -1);
            return numbered(Integer.parseInt(words[2]), Integer.parseInt(words[4]));
        }
        if (comment.startsWith(FOUND)) {
            List<String> more = new ArrayList<>(found);
            more.add(comment.substring(FOUND.length()));
            return tasted(more);
        }
        if (comment.startsWith(WHY)) {
            return new BatchLineage(number, after, found, comment.substring(WHY.length()), taken);
        }
        return comment.startsWith(TAKEN) ? withChange(comment.substring(TAKEN.length())) : this;
    }
}
