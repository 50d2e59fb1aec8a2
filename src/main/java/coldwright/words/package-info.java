/** Visible texts in every language: bundles of texts, and sentences not yet in a language. */
package coldwright.words;
