/** Code completion: the valid names at the caret, found by compiling the code before it. */
package coldwright.bench.complete;
