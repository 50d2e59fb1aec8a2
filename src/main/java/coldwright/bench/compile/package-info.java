/**
 * From source text to orders: splitting a snippet into statements, compiling them through the
 * JShell API without running anything, and explaining errors in plain words.
 */
package coldwright.bench.compile;
