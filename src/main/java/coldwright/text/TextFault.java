package coldwright.text;

/**
 * Why a file is no text that can be used.
 *
 * @param line the line, from 1; 0 if it is the whole file
 * @param words what is wrong and the mend, without file and line
 */
public record TextFault(int line, String words) {}
