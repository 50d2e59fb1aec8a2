package coldwright.print;

import coldwright.workbook.handin.HandIn;

import java.util.Optional;

/**
 * Edition, paper and contents of a handout.
 *
 * @param edition who it is for
 * @param paper the sheet size
 * @param data whether to print the numbers of each figure as a table below it
 * @param work a learner's hand-in; empty for the lesson as its author wrote it
 */
public record HandoutOptions(
        HandoutEdition edition, PaperSize paper, boolean data, Optional<HandIn> work) {
    /** The usual handout: A4, without tables and without a learner's work. */
    public static HandoutOptions of(HandoutEdition edition) {
        return new HandoutOptions(edition, PaperSize.A4, false, Optional.empty());
    }
}
