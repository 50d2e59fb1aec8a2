/**
 * From source text to orders: splitting a snippet into statements, compiling them through the
 * JShell API without running anything, and saying what is wrong in a learner's words.
 */
package coldwright.bench.compile;
