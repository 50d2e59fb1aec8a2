/**
 * The commands without a window: walking through a lesson, checking lessons, and the help that goes
 * with them. Everything is written as UTF-8; nothing here ever shows a stack trace.
 */
package coldwright.terminal;
