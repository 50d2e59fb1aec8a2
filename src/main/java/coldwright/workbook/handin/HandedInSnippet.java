package coldwright.workbook.handin;

/**
 * A snippet as handed in.
 *
 * @param index index of the snippet in its step, from 0, given ones included
 * @param changed whether it differs from the author's
 * @param text its text
 */
public record HandedInSnippet(int index, boolean changed, String text) {}
