/**
 * The separate process of the bench. It receives orders (load this class, run it, set that
 * variable), executes them one after another, and sends back printed text, figures and exceptions.
 * It knows classes, not source text: the program compiles.
 */
package coldwright.bench.remote;
