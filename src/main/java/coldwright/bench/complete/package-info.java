/** The names that may stand at the caret, found by compiling what is before it. */
package coldwright.bench.complete;
