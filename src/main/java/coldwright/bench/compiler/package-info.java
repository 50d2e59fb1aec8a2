/**
 * The process that compiles snippets. Any text may overload Java's compiler, so it works in a
 * process that may die: the window never loads it.
 */
package coldwright.bench.compiler;
