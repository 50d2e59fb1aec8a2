/** Checking lessons: tries each claim of a lesson against the output of its snippets. */
package coldwright.terminal.check;
