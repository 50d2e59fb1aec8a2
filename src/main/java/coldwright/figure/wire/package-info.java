/**
 * Texts, counts and numbers between processes, each within a limit that has a name. Counts and
 * lengths are 4-byte integers, numbers 8-byte doubles, texts UTF-8 behind their length, high byte
 * first.
 */
package coldwright.figure.wire;
