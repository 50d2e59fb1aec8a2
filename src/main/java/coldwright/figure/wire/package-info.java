/**
 * Strings, counts and numbers between processes, each with a named limit. Counts and lengths are
 * 4-byte integers, numbers 8-byte doubles, strings UTF-8 after their length, all big-endian.
 */
package coldwright.figure.wire;
