/**
 * The near side of the bench: starting the separate process, talking to it, stopping and replacing
 * it. Nothing here knows source text.
 */
package coldwright.bench.process;
