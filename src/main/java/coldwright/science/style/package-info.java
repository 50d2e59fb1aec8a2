/**
 * What a batch is meant to be, its usual ranges with their sources, and what it must not contain.
 */
package coldwright.science.style;
