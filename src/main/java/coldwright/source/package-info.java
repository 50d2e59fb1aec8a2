/**
 * A lexer for Java text: tokens, names, brackets and colours. Reads unfinished text as well as
 * whole programs.
 */
package coldwright.source;
