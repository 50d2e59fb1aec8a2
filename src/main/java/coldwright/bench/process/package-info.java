/**
 * The program's side of the bench: starts the separate process, communicates with it, stops and
 * replaces it. It doesn't know source text.
 */
package coldwright.bench.process;
