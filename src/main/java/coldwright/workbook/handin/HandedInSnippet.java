package coldwright.workbook.handin;

/**
 * A snippet as handed in, by its index in its step, from 0, given ones included; and whether it
 * differs from the author's.
 */
public record HandedInSnippet(int index, boolean changed, String text) {}
