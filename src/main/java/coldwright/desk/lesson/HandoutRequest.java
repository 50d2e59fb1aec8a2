package coldwright.desk.lesson;

import coldwright.print.HandoutEdition;
import coldwright.print.PaperSize;

/**
 * Options of a handout.
 *
 * @param edition to read, to write on, or for the teacher
 * @param paper paper size
 * @param withWork whether it contains the learner's own snippets and predictions
 */
public record HandoutRequest(HandoutEdition edition, PaperSize paper, boolean withWork) {}
