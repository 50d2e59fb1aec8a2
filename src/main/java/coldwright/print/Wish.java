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
public record Wish(Edition edition, Paper paper, boolean data, Optional<HandIn> work) {
    /**
     * The usual handout.
     *
     * @param edition for whom
     * @return on A4, without tables and without anybody's work
     */
    public static Wish of(Edition edition) {
        return new Wish(edition, Paper.A4, false, Optional.empty());
    }
}
