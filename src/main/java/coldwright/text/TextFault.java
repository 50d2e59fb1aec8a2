package coldwright.text;

/**
 * An error in a text file and its fix, without file and line; the line counts from 1 and is 0 for
 * the whole file.
 */
public record TextFault(int line, String words) {}
