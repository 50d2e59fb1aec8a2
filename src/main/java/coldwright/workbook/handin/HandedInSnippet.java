package coldwright.workbook.handin;

/** A snippet as handed in, by its index in its step, from 0; and whether it was changed. */
public record HandedInSnippet(int index, boolean changed, String text) {}
