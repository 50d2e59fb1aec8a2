/**
 * Help on names: what the calculator's types, methods and constants are, in a sentence each, and
 * what may stand at the caret. The words come from the Javadoc; a build step writes them out. Knows
 * no window and no bench.
 */
package coldwright.help;
