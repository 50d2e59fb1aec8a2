package coldwright.desk.page;

import coldwright.print.Edition;
import coldwright.print.Paper;

/**
 * What a handout is asked for as.
 *
 * @param edition for whom
 * @param paper on which sheet
 * @param withWork whether the learner's own snippets and forecasts stand in it
 */
public record HandoutChoice(Edition edition, Paper paper, boolean withWork) {}
