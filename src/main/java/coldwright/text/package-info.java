/**
 * Text that people typed: its file, its bytes, and the word they most likely meant; and numbers as
 * they are written for people; and files that are written whole or not at all. Knows nothing of
 * lessons or batches.
 */
package coldwright.text;
