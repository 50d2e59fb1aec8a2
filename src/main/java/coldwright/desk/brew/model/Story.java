package coldwright.desk.brew.model;

import java.util.List;

/**
 * Where a batch stands in its row.
 *
 * @param number which batch it is, from 1
 * @param after the batch that it was made from; 0 for none
 * @param found what was wrong with it when it was tasted, in plain words
 * @param why what was wished or mended when it was made from the one before; empty if nothing
 */
public record Story(int number, int after, List<String> found, String why) {
    public Story {
        found = List.copyOf(found);
    }

    /** The first of a row. */
    static Story first(int number) {
        return new Story(number, 0, List.of(), "");
    }

    /** The same, tasted. */
    Story tasted(List<String> newFound) {
        return new Story(number, after, newFound, why);
    }

    /** The same under another number. */
    Story numbered(int newNumber, int newAfter) {
        return new Story(newNumber, newAfter, found, why);
    }
}
