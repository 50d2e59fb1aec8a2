package coldwright.text;

/** An error in a text file and its fix; the line counts from 1, 0 for the whole file. */
public record TextFault(int line, String words) {}
