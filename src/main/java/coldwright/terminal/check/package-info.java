/** Checking lessons: each claim of a lesson, tried against what its snippets give. */
package coldwright.terminal.check;
