package coldwright.desk.lesson;

import coldwright.print.HandoutEdition;
import coldwright.print.PaperSize;

/**
 * What a handout is asked for as.
 *
 * @param edition for whom
 * @param paper on which sheet
 * @param withWork whether the learner's own snippets and forecasts stand in it
 */
public record HandoutRequest(HandoutEdition edition, PaperSize paper, boolean withWork) {}
