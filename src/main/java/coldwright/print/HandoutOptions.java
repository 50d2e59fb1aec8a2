package coldwright.print;

import coldwright.workbook.handin.HandIn;

import java.util.Optional;

/**
 * Edition and sheet of a handout, whether the numbers of each figure are printed as a table below
 * it, and a learner's hand-in, empty for the lesson as its author wrote it.
 */
public record HandoutOptions(
        HandoutEdition edition, PaperSize paper, boolean data, Optional<HandIn> work) {
    /** The usual handout: A4, without tables and without a learner's work. */
    public static HandoutOptions of(HandoutEdition edition) {
        return new HandoutOptions(edition, PaperSize.A4, false, Optional.empty());
    }
}
