package coldwright.batch;

import java.util.ArrayList;
import java.util.List;

/**
 * A batch's position in a series of batches.
 *
 * @param number its number in the series, from 1
 * @param after the batch that it was made from; 0 for none
 * @param found its faults when tasted, in plain words
 * @param why the wish or fix for which it was made from the one before; empty if none
 * @param taken fixes and wishes applied to it, in plain words, oldest first
 */
public record BatchLineage(
        int number, int after, List<String> found, String why, List<String> taken) {
    /** The lineage of a file that was not written by a window. */
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
     * A batch without any applied changes.
     *
     * @param number its number in the series, from 1
     * @param after the batch that it was made from; 0 for none
     * @param found its faults, in plain words
     * @param why the wish or fix it was made for; empty if none
     */
    public BatchLineage(int number, int after, List<String> found, String why) {
        this(number, after, found, why, List.of());
    }

    /** The first of a series. */
    public static BatchLineage first(int number) {
        return new BatchLineage(number, 0, List.of(), "");
    }

    /** The same with the faults found when tasted. */
    public BatchLineage tasted(List<String> newFound) {
        return new BatchLineage(number, after, newFound, why, taken);
    }

    /** The same under another number. */
    public BatchLineage numbered(int newNumber, int newAfter) {
        return new BatchLineage(newNumber, newAfter, found, why, taken);
    }

    /** The same with a fix applied. */
    public BatchLineage withChange(String mend) {
        List<String> more = new ArrayList<>(taken);
        more.add(mend);
        return new BatchLineage(number, after, found, why, more);
    }

    /** The same without the fix applied last. */
    public BatchLineage putBack() {
        return taken.isEmpty()
                ? this
                : new BatchLineage(number, after, found, why, taken.subList(0, taken.size() - 1));
    }

    /** Comments for a recipe file, one per line. */
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

    /** Adds the data in a comment of a recipe file; other comments change nothing. */
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
