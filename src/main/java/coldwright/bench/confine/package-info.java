/**
 * What a confined snippet may name: the list, and the check of every class that it compiles to. See
 * {@code docs/security.md}.
 */
package coldwright.bench.confine;
