package coldwright.desk.batch.model;

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
    static BatchLineage first(int number) {
        return new BatchLineage(number, 0, List.of(), "");
    }

    /** The same, tasted. */
    BatchLineage tasted(List<String> newFound) {
        return new BatchLineage(number, after, newFound, why, taken);
    }

    /** The same under another number. */
    BatchLineage numbered(int newNumber, int newAfter) {
        return new BatchLineage(newNumber, newAfter, found, why, taken);
    }

    /** The same with a mend taken. */
    BatchLineage withChange(String mend) {
        List<String> more = new ArrayList<>(taken);
        more.add(mend);
        return new BatchLineage(number, after, found, why, more);
    }

    /** The same with the mend that was taken last put back. */
    BatchLineage putBack() {
        return taken.isEmpty()
                ? this
                : new BatchLineage(number, after, found, why, taken.subList(0, taken.size() - 1));
    }
}
