/**
 * The far side of the bench: what runs in the separate process. It takes orders (load this class,
 * run it, set that variable), obeys them one after another, and sends back what was printed, drawn
 * and thrown. It knows classes, not source text: compiling happens in the program's own process.
 */
package coldwright.bench.remote;
