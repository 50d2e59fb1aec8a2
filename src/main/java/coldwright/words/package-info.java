/** Visible texts in every language: bundles of words, and sentences that are not yet in one. */
package coldwright.words;
