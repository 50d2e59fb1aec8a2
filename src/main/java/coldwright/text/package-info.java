/**
 * Text that people typed: its file, its bytes, and the word they most likely meant. Knows nothing
 * of lessons or batches.
 */
package coldwright.text;
