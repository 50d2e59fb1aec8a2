package coldwright.print;

import coldwright.workbook.handin.HandIn;

import java.util.Optional;

/**
 * How a handout is wanted.
 *
 * @param edition for whom
 * @param paper on which sheet
 * @param data whether the figures' numbers stand beneath them as tables
 * @param work what a learner handed in; empty for the lesson as its author wrote it
 */
public record HandoutOptions(
        HandoutEdition edition, PaperSize paper, boolean data, Optional<HandIn> work) {
    /**
     * The usual handout.
     *
     * @param edition for whom
     * @return on A4, without tables and without anybody's work
     */
    public static HandoutOptions of(HandoutEdition edition) {
        return new HandoutOptions(edition, PaperSize.A4, false, Optional.empty());
    }
}
