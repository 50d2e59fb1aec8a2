package coldwright.workbook.handin;

/**
 * A snippet as handed in.
 *
 * @param index which snippet of its step, from 0, those given counted too
 * @param changed whether it differs from the author's
 * @param text the text that stood there
 */
public record HandedInSnippet(int index, boolean changed, String text) {}
