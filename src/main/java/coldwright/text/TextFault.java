package coldwright.text;

/**
 * An error in a text file.
 *
 * @param line the line, from 1; 0 for the whole file
 * @param words the error and its fix, without file and line
 */
public record TextFault(int line, String words) {}
