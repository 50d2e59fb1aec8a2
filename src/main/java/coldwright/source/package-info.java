/**
 * Java text taken apart: its tokens, the names and brackets in it, and its colours. Reads
 * half-typed text as well as whole programs, and knows nothing of who wrote it or who runs it.
 */
package coldwright.source;
