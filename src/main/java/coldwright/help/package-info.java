/**
 * Help on names: the calculator's types, methods and constants in a sentence each, and completions
 * at the caret. The texts come from the Javadoc; a build step writes them to a file. Independent of
 * window and bench.
 */
package coldwright.help;
