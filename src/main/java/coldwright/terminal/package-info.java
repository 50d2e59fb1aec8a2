/**
 * Commands without a window: walking through lessons, checking them, and their help. All output is
 * UTF-8; none of it is a stack trace.
 */
package coldwright.terminal;
